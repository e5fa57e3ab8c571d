namespace Seedfall.Exchange.Json;

/// <summary>Problems of one file as they are found; more than fifty are only counted.</summary>
internal sealed class ProblemList(string file)
{
    private const int Most = 50;
    private readonly List<JsonProblem> _problems = [];

    public IReadOnlyList<JsonProblem> All => _problems;

    public bool Any => _problems.Count > 0;

    public int Count { get; private set; }

    public void Add(JsonSpot at, string expected, string? found = null) =>
        Add(at.Path, at.Line, at.Column, expected, found ?? at.Shown);

    public void Add(string path, int line, int column, string expected, string found)
    {
        Count++;
        if (_problems.Count < Most)
        {
            _problems.Add(new JsonProblem(file, path, line, column, expected, found));
        }
    }
}

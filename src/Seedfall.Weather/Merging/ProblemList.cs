namespace Seedfall.Weather.Merging;

/// <summary>Problems found across files; after twenty only their number grows.</summary>
internal sealed class ProblemList
{
    private const int Shown = 20;

    private readonly List<FileProblem> _problems = [];
    private int _more;

    internal bool IsEmpty => _problems.Count == 0;

    internal void Add(FileDraft file, int line, int column, string expected, string found)
    {
        if (_problems.Count < Shown)
        {
            _problems.Add(new FileProblem(file.Name, line, column, expected, found));
        }
        else
        {
            _more++;
        }
    }

    internal IReadOnlyList<FileProblem> All() => _more == 0
        ? _problems
        : [.. _problems, new FileProblem("(all files)", 0, 0, "no problems", FormattableString.Invariant($"{_more} more like these"))];
}

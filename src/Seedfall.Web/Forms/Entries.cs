using Seedfall.Engine.Workings;

namespace Seedfall.Web.Forms;

/// <summary>
/// What stands in a form's fields, as text, with what is wrong beside each. Filled from a lawn or from a request, read by
/// the fields, and shown again untouched when something is wrong, so that nothing typed is lost.
/// </summary>
public sealed class Entries(UnitSystem system)
{
    private readonly Dictionary<string, IReadOnlyList<string>> _texts = [];
    private readonly List<FieldProblem> _problems = [];

    /// <summary>The system whose units are offered first.</summary>
    public UnitSystem System { get; } = system;

    /// <summary>In the order found.</summary>
    public IReadOnlyList<FieldProblem> Problems => _problems;

    public bool Sound => _problems.Count == 0;

    /// <summary>The posted fields as they came; texts over 4,000 characters are cut.</summary>
    public static Entries From(IFormCollection form, UnitSystem system)
    {
        const int longest = 4000;
        var entries = new Entries(system);
        foreach (var (name, values) in form)
        {
            entries._texts[name] = [.. values.Select(v => v is null ? "" : v.Length > longest ? v[..longest] : v)];
        }

        return entries;
    }

    /// <summary>The field's text, trimmed; empty where it is blank or absent.</summary>
    public string Text(string name) => _texts.TryGetValue(name, out var all) && all.Count > 0 ? all[0].Trim() : "";

    public IReadOnlyList<string> All(string name) => _texts.TryGetValue(name, out var all) ? all : [];

    public bool Has(string name) => _texts.ContainsKey(name);

    public void Put(string name, string? text) => _texts[name] = [text ?? ""];

    public void PutAll(string name, IEnumerable<string> texts) => _texts[name] = [.. texts];

    /// <summary>Notes what is wrong with a field; the first word on a field stands.</summary>
    public void Wrong(string name, string message)
    {
        if (ProblemOf(name) is null)
        {
            _problems.Add(new(name, message));
        }
    }

    public string? ProblemOf(string name) => _problems.FirstOrDefault(p => p.Name == name)?.Message;
}

/// <summary>What is wrong with one field: what was expected, in one sentence.</summary>
public sealed record FieldProblem(string Name, string Message);

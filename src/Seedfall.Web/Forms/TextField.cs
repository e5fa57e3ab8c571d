namespace Seedfall.Web.Forms;

/// <summary>A line of text.</summary>
public sealed record TextField(string Name, string Label) : Field(Name, Label)
{
    public int Longest { get; init; } = 80;

    /// <summary>Answers offered while typing.</summary>
    public IReadOnlyList<string> Offers { get; init; } = [];

    public void Fill(Entries entries, string? value) => entries.Put(Name, value);

    public string? Read(Entries entries)
    {
        var text = entries.Text(Name);
        if (text.Length == 0)
        {
            Missing(entries, "a name or a word");
            return null;
        }

        if (text.Length > Longest)
        {
            entries.Wrong(Name, $"{Label}: at most {Longest} characters are kept; this has {text.Length}.");
        }
        else if (text.Any(char.IsControl))
        {
            entries.Wrong(Name, $"{Label}: one line of plain text is needed.");
        }

        return text;
    }
}

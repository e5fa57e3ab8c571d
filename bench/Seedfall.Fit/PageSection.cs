namespace Seedfall.Fit;

/// <summary>Sections of <c>docs/validation.md</c>, each from its level-two heading to the next. Whoever writes one leaves the others alone.</summary>
internal static class PageSection
{
    private const string NewPage = "# Validation\n\nWhat the program computes beside what was measured. Every section says how to rerun it.\n";

    /// <summary>Puts a section in place of the one of the same heading, or after the section named, or at the end.</summary>
    /// <param name="file">The page; begun where it is not there.</param>
    /// <param name="heading">Its heading line, with the marks.</param>
    /// <param name="body">What follows the heading.</param>
    /// <param name="after">Heading of the section it follows when new; null for the end.</param>
    internal static void Write(string file, string heading, string body, string? after = null) =>
        File.WriteAllText(file, Replaced(File.Exists(file) ? File.ReadAllText(file) : NewPage, heading, body, after));

    internal static string Replaced(string page, string heading, string body, string? after)
    {
        var (start, end) = Find(page, heading);
        if (start < 0)
        {
            start = end = after is not null && Find(page, after) is { Start: >= 0 } found ? found.End : page.Length;
        }

        var rest = page[end..].Trim('\n');
        return $"{page[..start].TrimEnd()}\n\n{heading}\n\n{body.Trim('\n')}\n{(rest.Length > 0 ? $"\n{rest}\n" : string.Empty)}";
    }

    private static (int Start, int End) Find(string page, string heading)
    {
        var start = $"\n{page}".IndexOf($"\n{heading}\n", StringComparison.Ordinal);
        if (start < 0)
        {
            return (-1, -1);
        }

        var next = page.IndexOf("\n## ", start + heading.Length, StringComparison.Ordinal);
        return (start, next < 0 ? page.Length : next + 1);
    }
}

using System.Globalization;
using Seedfall.Exchange.Tests.Support;
using Seedfall.Planning.Judgment.Survey.Causes;

namespace Seedfall.Exchange.Tests.Docs;

/// <summary>The table of weights on the page is the one the code weighs by.</summary>
public sealed class CausesPageTests
{
    private const string Heading = "## The table\n\n";

    [Fact]
    public void The_table_on_the_page_is_the_one_in_use()
    {
        var path = Repository.PathOf("docs", "science", "causes.md");
        var page = File.ReadAllText(path);
        var start = page.IndexOf(Heading, StringComparison.Ordinal) + Heading.Length;
        Assert.True(start >= Heading.Length, "the page has no table");
        var table = Table();
        if (Repository.AcceptGolden)
        {
            File.WriteAllText(path, page[..start] + table);
        }

        Assert.Equal(table, File.ReadAllText(path)[start..]);
    }

    private static string Table() =>
        "| cause | finding | seen | not seen | source |\n| --- | --- | --- | --- | --- |\n"
        + string.Concat(EvidenceTable.All.Select(row => string.Create(
            CultureInfo.InvariantCulture,
            $"| {CauseFacts.Of(row.Cause).Name} | {row.Finding.Seen} | {row.Seen:+0.0;-0.0;0} | {row.NotSeen:+0.0;-0.0;0} | {row.Source} |\n")));
}

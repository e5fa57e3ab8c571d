using Seedfall.Cli.Output;
using Seedfall.Exchange.Calendar;
using Seedfall.Exchange.Paper;
using Seedfall.Exchange.Plans;
using Seedfall.Exchange.Tables;
using Seedfall.Planning.Plan;

namespace Seedfall.Cli.Commands;

/// <summary>The plan's files, all of them or none.</summary>
internal static class PlanFiles
{
    internal static async Task<IReadOnlyList<string>> Write(
        RecoveryPlan plan, PlanRequest asked, Printing printing, DateTimeOffset now, Streams streams, CancellationToken cancellation)
    {
        using var progress = new ProgressBar(streams, "writing the plan");
        var pages = await Task.WhenAll(PaperHtml.FullPlan(plan, asked.Paper), PaperHtml.Handout(plan, asked.Paper));
        var printed = printing.Print(pages, cancellation);
        using var output = new OutputFolder(asked.Folder);
        output.Add("plan.json", PlanJson.Write(plan));
        output.Add("plan.html", pages[0]);
        output.Add("handout.html", pages[1]);
        output.Add("season.ics", output.Earlier("season.ics") is { } earlier ? SeasonCalendar.Revise(plan, now, earlier) : SeasonCalendar.Write(plan, now));
        output.Add("materials.csv", MaterialsCsv.Write(plan));
        progress.Report(0.5);
        foreach (var (name, bytes) in new[] { "plan.pdf", "handout.pdf" }.Zip(await printed))
        {
            output.Add(name, bytes);
        }

        progress.Report(1.0);
        if (printing.Why is { } why)
        {
            streams.Remarks.WriteLine($"seedfall: {why}");
        }

        output.Publish();
        return [.. output.Names.Select(name => Path.Combine(asked.Folder, name))];
    }
}

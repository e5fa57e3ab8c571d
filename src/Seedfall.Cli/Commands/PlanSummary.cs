using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Cli.Commands;

/// <summary>What <c>seedfall plan</c> says when it is done.</summary>
internal static class PlanSummary
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    internal static void Print(RecoveryPlan plan, IReadOnlyList<string> files, bool json, Streams streams)
    {
        if (json)
        {
            streams.Results.WriteLine(JsonSerializer.Serialize(
                new
                {
                    lawn = plan.LawnId,
                    season = plan.Season,
                    verdict = plan.Verdict.Kind.ToString(),
                    sentence = plan.Verdict.Sentence,
                    seedDown = plan.Timing.SeedDown,
                    water = plan.Water.Result.ToString(),
                    next = plan.Next.Sentence,
                    walls = plan.Walls.Select(w => new { w.Id, w.Rule, w.Statement, w.Instead }),
                    files,
                },
                Json));
            return;
        }

        var output = streams.Results;
        output.WriteLine(plan.Verdict.Sentence);
        if (plan.Timing.SeedDown is { } day)
        {
            output.WriteLine($"Seed-down day: {FigureText.DateText(day)}");
        }

        output.WriteLine(plan.Water.Sentence);
        output.WriteLine($"Next: {plan.Next.Sentence}");
        foreach (var wall in plan.Walls)
        {
            output.WriteLine($"Refused ({wall.Rule}): {wall.Statement} Instead: {wall.Instead}");
        }

        foreach (var file in files)
        {
            output.WriteLine(file);
        }
    }
}

using Seedfall.Engine.Workings;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>The watering of one phase as lines of a task.</summary>
internal static class WaterLines
{
    internal static IReadOnlyList<string> For(TaskFacts facts, string phaseId) =>
        Phase(facts, phaseId) is { } phase ? [.. phase.Runs.Select(Line)] : [];

    internal static PhaseWatering? Phase(TaskFacts facts, string phaseId) => facts.Water.Phases.FirstOrDefault(p => p.PhaseId == phaseId);

    private static string Line(SetRun run)
    {
        var minutes = FigureText.Show(run.MinutesPerRound, UnitSystem.UsCustomary);
        var cycles = run.Cycles <= 1 ? "" : run.SoakMinutes is { } soak
            ? $", in {run.Cycles} cycles with {FigureText.Show(soak, UnitSystem.UsCustomary)} to soak between"
            : $", in {run.Cycles} cycles";
        return $"{run.SetName}: {minutes} a round{cycles}.";
    }
}

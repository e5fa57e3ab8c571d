using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Materials;

/// <summary>What the record makes of one feeding, in words.</summary>
internal static class RecordedWords
{
    internal static string Of(Lawn lawn, FedStep? fed, Figure? planned, Figure? applied, Figure? left) => fed is null
        ? Open(planned, left)
        : $"{Put(fed, planned, applied)}{(fed.IsDone ? "" : Rest(lawn, fed, left))}{(applied is not null && fed.Entries.All(e => FedRecord.PoundsPerM(e) is not null) ? "" : NoAnalysis(planned))}";

    internal static string Besides(IReadOnlyList<LogEntry.Applied> entries, Figure? applied) =>
        $"Put on {Days(entries)}, near no feeding of the plan{(applied is null ? "" : $": {FigureText.Both(applied)}")}. It counts for the year.";

    private static string Open(Figure? planned, Figure? left) => (planned, left) switch
    {
        (null, null) => "Left out, as before.",
        ({ } was, null) => $"{FigureText.Both(was)} was planned; left out, for the year has no room for it after what is recorded.",
        (null, { } now) => $"{FigureText.Both(now)} is planned.",
        ({ } was, { } now) when now.Value < was.Value * (1.0 - 1.0e-9) => $"Lowered from {FigureText.Both(was)} to {FigureText.Both(now)} after what is recorded.",
        ({ } was, { } now) when now.Value > was.Value * (1.0 + 1.0e-9) => $"{FigureText.Both(now)}, where {FigureText.Both(was)} was planned: less went on before than was planned.",
        ({ } was, _) => $"{FigureText.Both(was)}, as planned.",
    };

    private static string Put(FedStep fed, Figure? planned, Figure? applied) =>
        $"Put on {Days(fed.Entries)}{(applied is null ? "" : $": {FigureText.Both(applied)}")}{(planned is null ? ", where none was planned" : applied is null ? "" : $" in the place of {FigureText.Both(planned)}")}.";

    private static string Rest(Lawn lawn, FedStep fed, Figure? left)
    {
        var open = Words.List(fed.OpenPatches.Select(id => lawn.Patches.First(p => p.Id == id).Name));
        return left is null ? $" Nothing more on {open}." : $" On {open} {FigureText.Both(left)} is still planned.";
    }

    private static string NoAnalysis(Figure? planned) =>
        $" A record holds no analysis: {(planned is null ? "its nitrogen is not counted" : "what was planned is counted for it")} until it is corrected with its nitrogen.";

    private static string Days(IReadOnlyList<LogEntry.Applied> entries) => Words.List(entries.Select(e => e.Day).Distinct().Select(day => FigureText.DateText(day)));
}

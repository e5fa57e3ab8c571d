using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Coverage;

/// <summary>Heads and coverage in words.</summary>
internal static class HeadWords
{
    /// <summary>A head's number, with its set's before it where several sets are seen together.</summary>
    public static string Name(int set, int head, bool many) => many ? string.Create(CultureInfo.InvariantCulture, $"{set}.{head}") : head.ToString(CultureInfo.InvariantCulture);

    public static string Of(CoverageHead head, UnitSystem system) =>
        $"{Side(head.At.EastM, "east", "west", system)}, {Side(head.At.NorthM, "north", "south", system)}, radius {Distance(head.Throw.Meters, system)}, {Arc(head)}, {Flow(head.Flow, system)}";

    public static string Arc(CoverageHead head) => head.ArcDeg >= 360.0
        ? "whole round"
        : $"from {NumberText.Write(Math.Round(head.ArcFromDeg))}° to {NumberText.Write(Math.Round((head.ArcFromDeg + head.ArcDeg) % 360.0))}°";

    /// <summary>What the map says, the worst of it first in view.</summary>
    public static string Sentence(CoverageView view, UnitSystem system)
    {
        var result = view.Result!;
        var who = view.Set?.Name ?? (view.Sets.Count == 1 ? view.Sets[0].Name : "All sets together");
        var where = string.Join(", ", view.Patches.Select(p => p.Name));
        if (!(result.MeanRate.MillimetersPerHour > 0.0))
        {
            return $"{who}: no water lands on {where} {view.Ask.WindWords}.";
        }

        var rate = FigureText.Show(view.Added is null ? QuantityKind.PrecipitationRate : QuantityKind.Depth, result.MeanRate.MillimetersPerHour, system);
        var after = view.Added switch { null => "", "place" => " once each place has run an hour", _ => " once each set has run an hour" };
        var driest = Value(result, "water.coverage.driest");
        var longer = Value(result, "water.coverage.scheduling") is { } scheduling
            ? string.Create(CultureInfo.InvariantCulture, $"so runs must be {scheduling:0.0} times as long as the mean asks")
            : "and stays dry however long it runs";
        var over = result.Figures.Where(f => f.Id.StartsWith("water.coverage.over-", StringComparison.Ordinal)).OrderByDescending(f => f.Value).FirstOrDefault(f => f.Value >= 0.01);
        var waste = over is null ? "" : $" {Lower(over.Label, FigureText.Show(over, system).ToString())}";
        return $"{who}: {rate} on average over {where} {view.Ask.WindWords}{after}; the driest place gets {FigureText.Show(QuantityKind.Share, driest ?? 0.0, system)} of that, {longer}.{waste}";
    }

    public static double? Value(CoverageResult result, string id) => result.Figures.FirstOrDefault(f => f.Id == id)?.Value;

    private static string Lower(string label, string share) => $"{share} of the water lands{label["Water that lands".Length..]}.";

    private static string Side(double meters, string plus, string minus, UnitSystem system) => $"{Distance(Math.Abs(meters), system)} {(meters < 0.0 ? minus : plus)}";

    private static string Distance(double meters, UnitSystem system) => system == UnitSystem.Metric
        ? $"{NumberText.Write(Math.Round(meters, 1))} m"
        : $"{NumberText.Write(Math.Round(new Length(meters).Feet, 1))} ft";

    private static string Flow(FlowRate flow, UnitSystem system) => system == UnitSystem.Metric
        ? $"{NumberText.Write(Math.Round(flow.LitersPerMinute, 1))} L per min"
        : $"{NumberText.Write(Math.Round(flow.GallonsPerMinute, 2))} gal per min";
}

using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>The year's use of a pre-emergent from the notes and from the record, and the walls it stands against.</summary>
/// <param name="Label">The label.</param>
/// <param name="Entered">From the notes: the entered figure or the past sprays, whichever is more.</param>
/// <param name="Recorded">From the record of applications.</param>
/// <param name="Uncounted">Past sprays of the notes that cannot be put as this product, being of the other measure.</param>
internal sealed record YearUse(HerbicideLabel Label, ProductRate Entered, RecordedUse Recorded, IReadOnlyList<PastSpray> Uncounted)
{
    private const string Source = "label, as entered";

    /// <summary>Applied so far. What is in the notes and what is in the record are taken as different applications.</summary>
    internal ProductRate Applied => Entered + Recorded.Applied;

    /// <param name="lawn">The lawn with its past sprays; one of the same day as a recorded application is that application.</param>
    /// <param name="label">The label.</param>
    /// <param name="log">The record.</param>
    /// <param name="year">Calendar year.</param>
    /// <param name="before">Only recorded applications before this day count; null counts all.</param>
    internal static YearUse Of(Lawn lawn, HerbicideLabel label, FieldLog log, int year, DateOnly? before = null)
    {
        var recorded = RecordedUse.Of(label, log, year, before);
        var days = recorded.Applications.Select(e => e.Day).ToHashSet();
        List<PastSpray> noted = [.. lawn.Sprayed.Where(s => !days.Contains(s.Date))];
        return new(label, YearlyUse.Applied(label, noted, year), recorded, YearlyUse.OtherMeasure(label, noted, year));
    }

    /// <summary>The walls of the year for so many applications at the label's rate; empty where they fit or no maximum is known.</summary>
    internal IEnumerable<Wall> Walls(string id, int applications)
    {
        if (YearlyUse.Maximum(Label) is not { } most)
        {
            yield break;
        }

        if (Recorded.Uncounted.Count > 0)
        {
            yield return new(
                $"{id}.uncounted",
                "Highest amount in one year",
                Text($"The record of {string.Join(", ", Recorded.Uncounted.Select(e => FigureText.DateText(e.Day)))} names {Label.ActiveIngredient} without an amount that can be held against the yearly maximum."),
                "Enter the product's strength in the notes, or put the record right with the amount of active ingredient.",
                Source);
        }

        if (Uncounted.Count > 0)
        {
            yield return new(
                $"{id}.uncounted",
                "Highest amount in one year",
                Text($"The notes name {Label.ActiveIngredient} of {string.Join(", ", Uncounted.Select(s => FigureText.DateText(s.Date)))} {(Label.Rate.Measure == ProductMeasure.Weight ? "by volume" : "by weight")}; it cannot be held against a yearly maximum given {(Label.Rate.Measure == ProductMeasure.Weight ? "by weight" : "by volume")}."),
                "Write it into the record with its amount of active ingredient, and enter this product's strength in the notes; then take it out of the notes' past sprays.",
                Source);
        }

        if (!YearlyUse.Fits(most, [Applied, .. Enumerable.Repeat(Label.Rate, applications)]))
        {
            yield return Full(id, most, applications);
        }
    }

    private Wall Full(string id, ProductRate most, int applications)
    {
        var room = most > Applied ? most - Applied : ProductRate.Nothing(most.Measure);
        return new(
            id,
            "Highest amount in one year",
            Text($"{string.Join(" + ", Parts(applications))} = {(Applied + Label.Rate * applications).Words()} of {Label.ActiveIngredient} this year is above {most.PerAcre():0.##}."),
            !room.IsNothing
                ? Text($"{room.Words()} ({Metric(room)}) are left this year: lower the rate to that if the label allows so little, leave an application out, or wait for the new year.{Twice}")
                : $"Nothing is left this year: leave it out until the new year.{Twice}",
            Label.MaximumPerYear is null ? "HortScience 53(11):1689, maximum annual use rate; check your label" : Source);
    }

    private IEnumerable<string> Parts(int applications)
    {
        if (!Entered.IsNothing)
        {
            yield return Text($"{Entered.PerAcre():0.##} entered in the notes");
        }

        if (!Recorded.Applied.IsNothing)
        {
            yield return Text($"{Recorded.Applied.PerAcre():0.##} in the record");
        }

        yield return Text($"{Label.Rate.PerAcre():0.##} now");
        if (applications > 1)
        {
            yield return Text($"{Label.Rate.PerAcre():0.##} repeated");
        }
    }

    private string Twice => !Entered.IsNothing && !Recorded.Applied.IsNothing
        ? " If the notes and the record mean the same application, take it out of the notes."
        : "";

    private static string Metric(ProductRate rate) => rate.Weight is { } weight ? Text($"{weight.KilogramsPerHectare:0.####} kg/ha") : Text($"{rate.Volume!.Value.LitersPerHectare:0.###} L/ha");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>The grub count.</summary>
internal sealed class LiftStep() : StepLeaf(WalkStep.Lift, "lift", "Lift and count grubs", "Cut three sides of a square at the edge of the damage, roll it back, search the first 3 in (8 cm) of soil, count living white grubs, and lay it back.")
{
    private const int Open = 5;
    private const int Usual = 12;
    private const int Most = 40;

    private static readonly QuantityField<Area> Ground = new("ground", "Ground of one lift", UnitChoices.LiftArea, Area.FromSquareFeet(0.01), Area.FromSquareFeet(20.0))
    {
        Hint = "A square foot is usual (0.0929 m²). A 4 1/4 in (108 mm) core is 0.0985 sq ft.",
    };

    private static readonly IReadOnlyList<NumberField> Counts = [.. Enumerable.Range(1, Most).Select(i =>
        new NumberField($"grubs{i.ToString(CultureInfo.InvariantCulture)}", $"Grubs, lift {i.ToString(CultureInfo.InvariantCulture)}", 0.0, 300.0) { Whole = true })];

    public override string Gist(PatchSurvey survey, UnitSystem system) => GrubEstimate.Of(survey.Lifts) is { } grubs
        ? FormattableString.Invariant($"{grubs.PerSquareFoot:0.#} a square foot ({grubs.Low:0.#} to {grubs.High:0.#}) from {grubs.Lifts} {(grubs.Lifts == 1 ? "lift" : "lifts")}. {grubs.Words}")
        : "";

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn)
    {
        var filled = lawn.Patches.Max(p => p.Survey?.Lifts?.Counts.Count ?? 0);
        return
        [
            new("Grubs", [.. Counts.Take(Open)]) { Bare = true },
            new("More lifts", [.. Counts.Skip(Open).Take(Math.Max(Usual, filled) - Open)]) { Folded = true },
            new("How much ground", [Ground]),
        ];
    }

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        Ground.Fill(entries, survey.Lifts?.Ground ?? Area.FromSquareFeet(1.0));
        for (var i = 0; i < Most; i++)
        {
            Counts[i].Fill(entries, i < survey.Lifts?.Counts.Count ? survey.Lifts.Counts[i] : null);
        }
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries)
    {
        var ground = Ground.Read(entries);
        int[] counts = [.. Counts.Select(c => c.ReadWhole(entries)).OfType<int>()];
        if (counts.Length > 0 && ground is null)
        {
            entries.Wrong(Ground.Name, $"{Ground.Label}: how much ground one lift was is needed.");
        }

        return before with { Lifts = counts.Length == 0 ? null : new GrubLifts(counts, ground ?? Area.FromSquareFeet(1.0)) };
    }

    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Lifts = null };
}

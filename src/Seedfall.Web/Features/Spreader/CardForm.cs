using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Planning.Materials;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Spreader;

/// <summary>A new spreader as a form.</summary>
internal static class CardForm
{
    private static readonly TextField Name = new("name", "What you call it") { Required = true, Hint = "For example: the green push spreader." };
    private static readonly ChoiceField<SpreaderKind> Kind = new("kind", "Kind", Answers.Spreaders) { Blank = null, Required = true };
    private static readonly ChoiceField<bool> Letters = new("letters", "Its scale has", [(false, "numbers", "Numbers"), (true, "letters", "Letters")]) { Blank = null, Required = true };
    private static readonly TextField Least = new("least", "Reading with the gate shut") { Required = true, Longest = 10, Hint = "A number, or a letter." };
    private static readonly TextField Greatest = new("greatest", "Reading with the gate wide open") { Required = true, Longest = 10 };
    private static readonly NumberField Step = new("step", "Smallest step it can be set by", 0.001, 1000.0) { Required = true, Hint = "Half a mark is 0.5. On a scale of letters 1 is a whole letter." };
    private static readonly QuantityField<Length> Swath = new("swath", "Distance between passes", UnitChoices.Distance, Length.Zero, Length.FromMeters(30.0)) { AboveLeast = true, Hint = "From a pan test. Blank takes 8 ft (2.4 m) for a rotary spreader, 22 in (56 cm) for a drop spreader, 6 ft (1.8 m) for a hand-cranked one." };
    private static readonly QuantityField<Speed> Walk = new("walk", "Walking speed", UnitChoices.Speed, Speed.Zero, Speed.FromMetersPerSecond(4.0)) { AboveLeast = true, Hint = "Blank takes 3 mph (4.8 km/h)." };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The spreader", [Name, Kind]), new("Its scale", [Letters, Least, Greatest, Step]), new("How it is walked", [Swath, Walk])];

    public static Entries Blank(UnitSystem system)
    {
        var entries = new Entries(system);
        Kind.Fill(entries, SpreaderKind.Rotary);
        Letters.Fill(entries, false);
        Swath.Fill(entries, null);
        Walk.Fill(entries, null);
        return entries;
    }

    /// <summary>The spreader the form describes; null where a problem was noted.</summary>
    public static KeptSpreader? Read(Entries entries)
    {
        var (name, kind, letters) = (Name.Read(entries), Kind.Read(entries), Letters.Read(entries) ?? false);
        var (least, greatest, step) = (Opening(Least, entries, letters), Opening(Greatest, entries, letters), Step.Read(entries));
        var (swath, walk) = (Swath.Read(entries), Walk.Read(entries));
        if (least is { } low && greatest is { } high && step is { } by && SpreaderScale.Fault(low, high, by, letters) is { } fault)
        {
            entries.Wrong(Greatest.Name, $"Its scale: {fault}.");
        }

        return entries.Sound
            ? new KeptSpreader { Id = "new", Name = name!, Kind = kind!.Value, Scale = new(least!.Value, greatest!.Value, step!.Value, letters), Swath = swath, Walk = walk }
            : null;
    }

    private static double? Opening(TextField field, Entries entries, bool letters)
    {
        if (field.Read(entries) is not { } text)
        {
            return null;
        }

        // Any scale reads letters and numbers alike.
        var opening = new SpreaderScale(1.0, 26.0, 1.0, letters).Read(text);
        if (opening is null)
        {
            entries.Wrong(field.Name, $"{field.Label}: {(letters ? "a letter such as A" : "a number such as 0")} is needed, not “{text}”.");
        }

        return opening;
    }
}

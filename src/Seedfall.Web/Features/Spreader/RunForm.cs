using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Spreader;

/// <summary>A weighed run as a form: on a job of a lawn, or as a test over a measured area.</summary>
internal static class RunForm
{
    public static IReadOnlyList<UnitChoice<Mass>> Weights { get; } =
    [
        new("lb", "lb", UnitSystem.UsCustomary, Mass.FromPounds, m => m.Pounds),
        new("kg", "kg", UnitSystem.Metric, Mass.FromKilograms, m => m.Kilograms),
        new("oz", "oz", UnitSystem.UsCustomary, Mass.FromOunces, m => m.Ounces),
        new("g", "g", UnitSystem.Metric, Mass.FromGrams, m => m.Grams),
    ];

    private static readonly Mass Heaviest = Mass.FromKilograms(2000.0);
    private static readonly TextField Opening = new("opening", "Opening it was set to") { Required = true, Longest = 10 };
    private static readonly QuantityField<Mass> PutIn = new("put", "Put in", Weights, Mass.Zero, Heaviest) { Required = true, AboveLeast = true };
    private static readonly QuantityField<Mass> Left = new("left", "Left in it at the end", Weights, Mass.Zero, Heaviest) { Hint = "Weigh it. Where all of it is left, write the whole amount: nothing fell." };
    private static readonly QuantityField<Area> GaveOut = new("covered", "Or it gave out after", UnitChoices.LiftArea, Area.Zero, Area.FromHectares(20.0)) { AboveLeast = true, Hint = "Ground covered when it was empty. Length walked times distance between passes will do." };
    private static readonly QuantityField<Area> Course = new("covered", "Ground it went on", UnitChoices.LiftArea, Area.Zero, Area.FromHectares(20.0)) { AboveLeast = true, Required = true };
    private static readonly ChoiceField<SpreadMaterial> Material = new("material", "What was in it", SpreaderWords.Materials) { Blank = null, Required = true };
    private static readonly TextField What = new("what", "Its name") { Required = true, Hint = "A lot number or a grade: runs of one day with the same name tell most about each other." };

    public static IReadOnlyList<FieldGroup> JobGroups { get; } = [new("The run", [Opening, PutIn, Left, GaveOut]) { Bare = true }];

    public static IReadOnlyList<FieldGroup> TestGroups { get; } = [new("What was in it", [Material, What]), new("The run", [Opening, PutIn, Left, Course])];

    public static Entries Blank(UnitSystem system)
    {
        var entries = new Entries(system);
        PutIn.Fill(entries, null);
        Left.Fill(entries, null);
        GaveOut.Fill(entries, null);
        Material.Fill(entries, SpreadMaterial.CoarseSeed);
        return entries;
    }

    /// <summary>Fields filled with what the next step says.</summary>
    public static Entries For(UnitSystem system, KeptSpreader spreader, SpreadStep.Spread step)
    {
        var entries = Blank(system);
        Opening.Fill(entries, spreader.Scale.Show(step.Opening));
        return entries;
    }

    /// <summary>A run on a job; null where a problem was noted.</summary>
    public static SpreaderEntry.Run? Read(Entries entries, KeptSpreader spreader, SpreadJob job, Area open, Guid id, DateTimeOffset at)
    {
        var (opening, put, left, gaveOut) = (ReadOpening(entries, spreader.Scale), PutIn.Read(entries), Left.Read(entries), GaveOut.Read(entries));
        if (entries.Sound && left is null && gaveOut is null)
        {
            entries.Wrong(Left.Name, "Left in it at the end: what was left, or the ground it covered before it gave out, is needed.");
        }

        if (entries.Sound && left > Mass.Zero && gaveOut is not null)
        {
            entries.Wrong(GaveOut.Name, "It gave out: then nothing is left in it. Fill in the one or the other.");
        }

        return Checked(entries, spreader, opening, put, left ?? Mass.Zero, gaveOut ?? open, (o, used, covered) => new SpreaderEntry.Run
        {
            Id = id,
            At = at,
            Material = job.Ahead.Material,
            What = job.Ahead.What,
            Opening = o,
            Covered = covered,
            Used = used,
            Swath = job.Ahead.Swath,
            Walk = job.Ahead.Walk,
            LawnId = job.LawnId,
            JobId = job.Id,
        });
    }

    /// <summary>A test over a measured area; null where a problem was noted.</summary>
    public static SpreaderEntry.Run? ReadTest(Entries entries, KeptSpreader spreader, Guid id, DateTimeOffset at)
    {
        var (material, what) = (Material.Read(entries), What.Read(entries));
        var (opening, put, left, course) = (ReadOpening(entries, spreader.Scale), PutIn.Read(entries), Left.Read(entries), Course.Read(entries));
        return Checked(entries, spreader, opening, put, left ?? Mass.Zero, course, (o, used, covered) => new SpreaderEntry.Run
        {
            Id = id,
            At = at,
            Material = material!.Value,
            What = what!,
            Opening = o,
            Covered = covered,
            Used = used,
        });
    }

    /// <summary>The opening typed for the first grains; null where a problem was noted.</summary>
    public static double? ReadOpening(Entries entries, SpreaderScale scale)
    {
        if (Opening.Read(entries) is not { } text)
        {
            return null;
        }

        var opening = scale.Read(text);
        if (opening is null || !scale.Holds(opening.Value))
        {
            entries.Wrong(Opening.Name, $"Opening: a reading from {scale.Show(scale.Least)} to {scale.Show(scale.Greatest)} is needed, not “{text}”.");
            return null;
        }

        return opening;
    }

    private static SpreaderEntry.Run? Checked(Entries entries, KeptSpreader spreader, double? opening, Mass? put, Mass left, Area? covered, Func<double, Mass, Area, SpreaderEntry.Run> make)
    {
        if (entries.Sound && left > put)
        {
            entries.Wrong(Left.Name, "Left in it at the end: no more can be left than was put in.");
        }

        if (!entries.Sound)
        {
            return null;
        }

        var run = make(opening!.Value, put!.Value - left, covered!.Value);
        if (SpreaderRules.Problem(spreader.Scale, run) is { } problem)
        {
            entries.Wrong(PutIn.Name, $"The run: {problem}.");
            return null;
        }

        return run;
    }
}

using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Rules;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn.Leaves;

/// <summary>The patches: the parts of the lawn, each in one condition.</summary>
internal sealed class PatchesLeaf() : ListLeaf<Patch>("patches", "Patches", "Size and living cover decide the verdict, the seed and the water.")
{
    private static readonly TextField Name = new("patch", "Name of the patch") { Required = true, Longest = 60, Hint = "For example: front, south strip, under the maple." };
    private static readonly TicksField<GrassSpecies> Grasses = new("grasses", "Grass growing or wanted here", Answers.Grasses) { Required = true };
    private static readonly NumberField Cover = new("cover", "Living cover", 0.0, 100.0, "%") { Hint = "Share of the ground with living turf. Tug brown tufts: firm crowns are alive." };
    private static readonly ChoiceField<DamageCause> Cause = new("cause", "What thinned it", Answers.Causes);
    private static readonly TickField Cured = new("cured", "The cause has been dealt with");
    private static readonly NumberField Sun = new("sun", "Direct sun on a clear day in early autumn", 0.0, 16.0, "hours");
    private static readonly NumberField Slope = new("slope", "Slope", 0.0, 100.0, "%") { Hint = "Rise over run: 1 ft in 10 ft is 10 %." };
    private static readonly QuantityField<Depth> Thatch = new("thatch", "Thatch", UnitChoices.Depth, Depth.Zero, Depth.FromMillimeters(150.0));
    private static readonly NumberField Grubs = new("grubs", "White grubs", 0.0, 200.0, "per sq ft") { Hint = "Lift a square foot of turf and count." };
    private static readonly NumberField Weeds = new("weeds", "Weeds", 0.0, 100.0, "% of the ground");
    private static readonly ChoiceField<bool> Dormant = new("dormant", "Only dormant?", Answers.YesNo) { Hint = "Yes where the tufts hold firm when tugged." };

    public override string Each => "patch";

    public override int Fewest => 1;

    /// <summary>What cannot be left out.</summary>
    public static IReadOnlyList<FieldGroup> NeededGroups() => [new("The first patch", [Name, Grasses, Cover]), .. PatchShapeFields.Groups(null)];

    public override IReadOnlyList<FieldGroup> Groups(Lawn lawn, TradeTables trade) =>
    [
        new("The patch", [Name]),
        .. PatchShapeFields.Groups(lawn.Patches.FirstOrDefault(p => PatchShapeFields.OnlyKept(p.Shape))?.Shape),
        new("What grows there", [Grasses, Cover, Cause, Cured]),
        new("What it stands in", [Sun, Slope]),
        new("Found on the walk-over", [Thatch, Grubs, Weeds, Dormant]) { Hint = "Leave blank what you did not look at." },
    ];

    protected override IReadOnlyList<Patch> Items(Lawn lawn) => lawn.Patches;

    protected override Lawn With(Lawn lawn, IReadOnlyList<Patch> items)
    {
        var kept = items.Select(p => p.Id).ToHashSet();
        return lawn with { Patches = items, Water = lawn.Water is null ? null : lawn.Water with { Sets = [.. lawn.Water.Sets.Select(s => s with { PatchIds = [.. s.PatchIds.Where(kept.Contains)] })] } };
    }

    protected override string Gist(Patch item, Lawn lawn, UnitSystem system)
    {
        var cover = item.LivingCover is { } c ? $"{NumberText.Write(Math.Round(c.Percent))} % alive" : "cover not known";
        var cause = item.Cause == DamageCause.Unknown ? "" : $", {Answers.Causes.Words(item.Cause).ToLowerInvariant()}";
        return $"{item.Name}: {cover}{cause}";
    }

    protected override void FillItem(Patch? before, Lawn lawn, Entries entries)
    {
        PatchShapeFields.Fill(before?.Shape, entries);
        Name.Fill(entries, before?.Name);
        Grasses.Fill(entries, before?.Grasses ?? lawn.Patches.LastOrDefault()?.Grasses ?? []);
        Cover.FillShare(entries, before?.LivingCover);
        Cause.Fill(entries, before is null or { Cause: DamageCause.Unknown } ? null : before.Cause);
        Cured.Fill(entries, before?.CauseCured ?? false);
        Sun.Fill(entries, before?.SunHours);
        Slope.Fill(entries, before?.SlopePercent);
        Thatch.Fill(entries, before?.Thatch);
        Grubs.Fill(entries, before?.GrubsPerSquareFoot);
        Weeds.FillShare(entries, before?.WeedCover);
        Dormant.Fill(entries, before?.Dormant);
    }

    protected override Patch? ReadItem(Patch? before, Lawn lawn, Entries entries)
    {
        var (name, grasses, shape) = (Name.Read(entries), Grasses.Read(entries, before?.Grasses), PatchShapeFields.Read(before?.Shape, entries));
        var others = lawn.Patches.Where(p => !ReferenceEquals(p, before)).ToList();
        if (name is not null && others.Any(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase)))
        {
            entries.Wrong(Name.Name, $"{Name.Label}: another patch is already called “{name}”.");
        }

        var patch = new Patch
        {
            Id = before?.Id ?? Slug.Unique(name ?? "patch", [.. others.Select(p => p.Id)]),
            Name = name ?? "",
            Shape = shape ?? new PatchShape.Typed(Area.FromSquareMeters(1.0)),
            Measured = shape?.GetType() == before?.Shape.GetType() ? before?.Measured : null,
            Grasses = grasses,
            LivingCover = Cover.ReadShare(entries),
            Cause = Cause.Read(entries) ?? DamageCause.Unknown,
            CauseCured = Cured.Read(entries),
            SunHours = Sun.Read(entries),
            SlopePercent = Slope.Read(entries),
            Thatch = Thatch.Read(entries),
            GrubsPerSquareFoot = Grubs.Read(entries),
            WeedCover = Weeds.ReadShare(entries),
            Dormant = Dormant.Read(entries),
        };
        return entries.Sound ? patch : null;
    }
}

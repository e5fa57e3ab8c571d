using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class CoverAndListTests
{
    [Fact]
    public void Thin_ground_is_covered_by_its_bare_part_and_steep_ground_whole()
    {
        var lawn = Some.Lawn(Some.Patch("thin", 1000, 0.4), Some.Patch("thick", 1000, 0.9), Some.Patch("bank", 1000, 0.9) with { SlopePercent = 15 });
        var plan = CoverPlanning.Plan(lawn, Some.Summaries(lawn)).Value!;
        Assert.Equal(["thin", "bank"], plan.Patches.Select(p => p.PatchId));
        Assert.Equal(600, new Area(plan.Patches[0].Area.Value).SquareFeet, 6);
        Assert.Equal(42, new Mass(plan.Patches[0].Amount.Value).Pounds, 6);
        Assert.Equal(plan.Total.Value, plan.Patches.Sum(p => p.Amount.Value), 9);
    }

    [Theory]
    [InlineData(CoverKind.Straw, QuantityKind.Mass)]
    [InlineData(CoverKind.Peat, QuantityKind.BulkVolume)]
    [InlineData(CoverKind.Compost, QuantityKind.BulkVolume)]
    [InlineData(CoverKind.PaperPellets, QuantityKind.Mass)]
    [InlineData(CoverKind.Hydromulch, QuantityKind.Mass)]
    [InlineData(CoverKind.StrawBlanket, QuantityKind.Area)]
    public void Each_kind_of_cover_has_its_measure(CoverKind kind, QuantityKind measure)
    {
        var lawn = Some.Lawn(Some.Patch("thin", 1000, 0.4)) with { Cover = new CoverMaterial(kind) };
        var plan = CoverPlanning.Plan(lawn, Some.Summaries(lawn)).Value!;
        Assert.Equal(measure, plan.Total.Kind);
        Assert.True(plan.Total.Value > 0);
        Assert.NotEmpty(plan.Sentence);
    }

    [Fact]
    public void No_cover_wanted_or_needed_is_no_plan()
    {
        var thin = Some.Lawn(Some.Patch("thin", 1000, 0.4));
        Assert.Null(CoverPlanning.Plan(thin with { Cover = new CoverMaterial(CoverKind.None) }, Some.Summaries(thin)).Value);
        var thick = Some.Lawn(Some.Patch("thick", 1000, 0.9));
        Assert.Null(CoverPlanning.Plan(thick, Some.Summaries(thick)).Value);
    }

    [Fact]
    public void The_list_buys_every_part_and_its_costs_add_up()
    {
        var lawn = Full;
        var lines = Lines(lawn);
        Assert.Equal(["seed", "starter", "pre-emergent", "spray.conditioner.1", "cover", "late-feed"], lines.Select(l => l.Id));
        Assert.Equal("1 bag of 25 lb", lines[0].Buy);
        var total = MaterialList.TotalCost(lines)!;
        Assert.Equal(total.Value, lines.Sum(l => l.Cost?.Value ?? 0), 9);
        Assert.Contains("wetting agent", total.Working.Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_prices_nothing_is_costed() => Assert.Null(MaterialList.TotalCost(Lines(Some.Lawn())));

    [Fact]
    public void Every_figure_has_its_own_id_a_formula_and_a_source()
    {
        var lawn = Full;
        var figures = Figures(lawn).ToList();
        Assert.True(figures.Count > 40);
        Assert.All(figures, f =>
        {
            Assert.NotEmpty(f.Working.Formula);
            Assert.NotEmpty(f.Working.Source);
            Assert.True(double.IsFinite(f.Value));
            Assert.All(f.Working.Inputs, i => Assert.True(double.IsFinite(i.Value)));
        });
        var clashes = figures.GroupBy(f => f.Id).Where(g => g.Distinct(ReferenceEqualityComparer.Instance).Count() > 1).Select(g => g.Key);
        Assert.Empty(clashes);
    }

    [Fact]
    public void A_weighed_pre_emergent_costs_by_its_weight_and_never_by_the_fluid_ounce()
    {
        var dry = Full with { PreEmergent = Full.PreEmergent! with { Formulation = FormulationClass.DryFlowable, Rate = MassPerArea.FromPoundsPerAcre(1) } };
        Assert.Null(Lines(dry).Single(l => l.Id == "pre-emergent").Cost);
        var line = Lines(dry with { Prices = dry.Prices! with { PreEmergentPerOunce = 3m } }).Single(l => l.Id == "pre-emergent");
        Assert.Equal(Math.Round(new Mass(line.Need.Value).Ounces * 3.0, 2), line.Cost!.Value);
    }

    private static Lawn Full { get; } = Some.Lawn(Some.Patch("front", 5000, 0.4), Some.Patch("back", 2500, 0.7)) with
    {
        SeedLots = [new SeedLot { LotNumber = "A", Components = [new(GrassSpecies.KentuckyBluegrass, Fraction.Of(0.95), Fraction.Of(0.85))], Bags = [new(Mass.FromPounds(25), 95m)] }],
        PreEmergent = new HerbicideLabel { ActiveIngredient = "mesotrione", Rate = VolumePerArea.FromFluidOuncesPerAcre(5), LabeledAtSeeding = [GrassSpecies.KentuckyBluegrass], SeedingIntervalDays = 0 },
        TankPartners = [new TankPartner { Name = "wetting agent", Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(4) }],
        Prices = new PriceList { StarterPerPound = 0.9m, PreEmergentPerFluidOunce = 11m, CoverPerPound = 0.2m },
    };

    private static IReadOnlyList<MaterialLine> Lines(Lawn lawn)
    {
        var patches = Some.Summaries(lawn);
        return MaterialList.Lines(
            lawn,
            SeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches).Value,
            FeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches, Some.SeedDown, Some.LateFeed).Value,
            SprayPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches, Some.SeedDown).Value,
            CoverPlanning.Plan(lawn, patches).Value);
    }

    /// <summary>Every figure of every section.</summary>
    private static IEnumerable<Figure> Figures(Lawn lawn)
    {
        var patches = Some.Summaries(lawn);
        var seed = SeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches).Value!;
        var feed = FeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches, Some.SeedDown, Some.LateFeed).Value!;
        var spray = SprayPlanning.Plan(lawn, Some.Choices, Tables.Shipped, patches, Some.SeedDown).Value!;
        var cover = CoverPlanning.Plan(lawn, patches).Value!;
        var lines = MaterialList.Lines(lawn, seed, feed, spray, cover);
        return
        [
            .. patches.SelectMany(p => (Figure[])[p.Area, p.LivingCover]),
            .. seed.Mix.SelectMany(m => (Figure[])[m.ShareByWeight, m.ShareByCount, m.PureLiveSeed]),
            .. seed.Patches.SelectMany(p => (Figure[])[p.TargetRate, p.ExtensionRate, p.Bulk, p.ThinExtra, p.LivePerArea]),
            seed.TotalBulk, seed.HalfPass, seed.Purchase!.Bought, seed.Purchase.LeftOver, seed.Purchase.Cost!, .. seed.Lots.Select(l => l.Bulk),
            .. feed.Feedings.SelectMany(f => (Figure[])[f.ProductRate, f.NitrogenRate, f.PhosphateRate, f.PotashRate, f.Product]), feed.NitrogenThisSeason,
            .. spray.Trips.SelectMany(t => (Figure[])[t.CarrierTotal, .. t.Products.SelectMany(p => (Figure[])[p.Rate, p.Total, .. p.PerPatch]), .. t.Tanks.SelectMany(k => (Figure[])[k.Carrier, .. k.Products])]),
            .. spray.YearlyTotals,
            .. cover.Patches.SelectMany(p => (Figure[])[p.Area, p.Amount]), cover.Total,
            .. lines.Select(l => l.Cost).OfType<Figure>(), MaterialList.TotalCost(lines)!,
        ];
    }
}

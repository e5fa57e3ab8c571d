using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using static Seedfall.Checks.Published.Trade.TradeData;

namespace Seedfall.Checks.Published.Trade;

/// <summary>Label rates, yearly maximum, waits after past sprays, tanks.</summary>
public sealed class SprayChecks
{
    private static readonly double FourPounds = LabelRate.StrengthFromPoundsPerGallon(4);
    private static readonly Area OneThousand = Area.FromThousandSquareFeet(1);

    private static VolumePerArea Ounces(double perAcre) => VolumePerArea.FromFluidOuncesPerAcre(perAcre);

    [Fact]
    public void Five_ounces_of_a_four_pound_product_are_0_156_lb_of_active_ingredient_per_acre() =>
        // WSSA abstract (McDonald): 5 fl oz per acre = 0.156 lb ai per acre.
        Close(0.156, LabelRate.ActiveIngredient(Ounces(5), FourPounds).PoundsPerAcre);

    [Theory]
    [InlineData(4, 0.0918, 2.72)]
    [InlineData(5, 0.1148, 3.39)]
    [InlineData(8, 0.1837, 5.43)]
    public void Label_rates_per_thousand_square_feet(double perAcre, double ounces, double milliliters)
    {
        // Arithmetic, not outside evidence.
        var dose = LabelRate.ProductFor(Ounces(perAcre), OneThousand);
        Close(ounces, dose.FluidOunces);
        Close(milliliters, dose.Milliliters);
    }

    [Fact]
    public void The_yearly_maximum_of_mesotrione_is_16_ounces_of_a_four_pound_product()
    {
        // HortScience 53(11):1689: maximum annual use rate 560 g ai per ha; the ounces are arithmetic.
        var label = new HerbicideLabel { ActiveIngredient = "mesotrione", Rate = Ounces(5), Strength = ProductStrength.PerLiter(FourPounds) };
        Close(15.99, YearlyUse.Maximum(label)!.Value.Volume!.Value.FluidOuncesPerAcre);
    }

    [Fact]
    public void Three_applications_of_5_5_and_8_ounces_are_refused_in_one_year()
    {
        // Arithmetic on the yearly maximum of HortScience 53(11):1689: 18 is above 16.
        Assert.False(YearlyUse.Fits(Ounces(16), Ounces(5), Ounces(5), Ounces(8)));
        Assert.True(YearlyUse.Fits(Ounces(16), Ounces(5), Ounces(5), Ounces(5)));
        Assert.True(YearlyUse.Fits(Ounces(16), Ounces(8), Ounces(8)));
    }

    [Fact]
    public void Prodiamine_ten_weeks_ago_is_too_soon_for_slit_seeded_bluegrass()
    {
        // Weed Technology 19(1) 2005 WT-03-199R: 14 weeks broadcast, 16 weeks slit-seeded.
        var wait = SprayedResearch.For("prodiamine", GrassSpecies.KentuckyBluegrass, SeedingMethod.SlitSeed)!;
        Assert.Equal(7 * 16, wait.WaitDays);
        Assert.True(wait.WaitDays > 7 * 10);
    }

    [Fact]
    public void Dithiopyr_seven_weeks_ago_is_long_enough_for_broadcast_bluegrass_by_research_only()
    {
        // Weed Technology 19(1) 2005 WT-03-199R: 6 weeks broadcast, 11 weeks slit-seeded.
        Assert.Equal(7 * 6, SprayedResearch.For("dithiopyr", GrassSpecies.KentuckyBluegrass, SeedingMethod.Broadcast)!.WaitDays);
        Assert.Equal(7 * 11, SprayedResearch.For("dithiopyr", GrassSpecies.KentuckyBluegrass, SeedingMethod.SlitSeed)!.WaitDays);

        // Delaware Cooperative Extension 2008: the label asks 3 months, 4 after split use; without an entry the longer one holds.
        var sprayed = new DateOnly(2025, 7, 18);
        var lawn = TradeLawn.With(l => l with { Sprayed = [new PastSpray { ActiveIngredient = "dithiopyr", Date = sprayed }] });
        Assert.True(SeedingInterval.EarliestSeeding(lawn, SeedingMethod.Broadcast).Earliest > sprayed.AddDays(7 * 7));
    }

    [Fact]
    public void Slit_seeding_needs_the_longer_wait_in_every_figure_of_the_trial()
    {
        // Weed Technology 19(1) 2005 WT-03-199R: slit-seeding brings treated soil up around the seed.
        foreach (var active in (string[])["dithiopyr", "pendimethalin", "prodiamine"])
        {
            Assert.True(
                SprayedResearch.For(active, GrassSpecies.KentuckyBluegrass, SeedingMethod.SlitSeed)!.WaitDays
                > SprayedResearch.For(active, GrassSpecies.KentuckyBluegrass, SeedingMethod.Broadcast)!.WaitDays);
        }
    }

    [Fact]
    public void Quinclorac_asks_seven_days_before_bluegrass_and_none_before_ryegrass()
    {
        // Delaware Cooperative Extension 2008.
        Assert.Equal(7, SprayedResearch.For("quinclorac", GrassSpecies.KentuckyBluegrass, SeedingMethod.Broadcast)!.WaitDays);
        Assert.Equal(0, SprayedResearch.For("quinclorac", GrassSpecies.PerennialRyegrass, SeedingMethod.Broadcast)!.WaitDays);
    }

    [Fact]
    public void Product_per_thousand_square_feet_and_over_many_acres_from_pints_per_acre()
    {
        var rate = VolumePerArea.FromFluidOuncesPerAcre(3.6 * 16);
        // Oklahoma State University: 3.6 pt per acre = 1.3 fl oz per 1,000 sq ft; 25 acres take 11.25 gal.
        Close(1.32, LabelRate.ProductFor(rate, OneThousand).FluidOunces);
        Close(11.25, LabelRate.ProductFor(rate, Area.FromAcres(25)).Gallons);
    }

    [Fact]
    public void Two_full_tanks_and_a_part_tank_for_7500_square_feet()
    {
        var lawn = Area.FromSquareFeet(7500);
        var carrier = LabelRate.ProductFor(VolumePerArea.FromGallonsPerThousandSquareFeet(1.5), lawn);
        var loads = TankMix.Loads(carrier, Volume.FromGallons(4));
        var doses = TankMix.Split(LabelRate.ProductFor(Ounces(5), lawn), loads);
        // Arithmetic, not outside evidence.
        Assert.Equal(3, loads.Count);
        Close(3.25, loads[2].Gallons);
        Close(9.05, doses[0].Milliliters);
        Close(7.35, doses[2].Milliliters);
        Close(0.861, doses.Sum(d => d.FluidOunces));
    }

    [Fact]
    public void Product_per_gallon_of_carrier()
    {
        // K-State (Wolf): 1 qt per acre at 40 gal per acre is 0.8 fl oz (24 mL) per gallon.
        var perGallon = Volume.FromGallons(1) * (VolumePerArea.FromFluidOuncesPerAcre(32) / VolumePerArea.FromGallonsPerAcre(40));
        Close(0.8, perGallon.FluidOunces);
        Assert.Equal(24, Math.Round(perGallon.Milliliters));
    }

    [Fact]
    public void Dry_product_per_gallon_of_carrier()
    {
        // University of Kentucky, Princeton (pesticide calculations for homeowners): 1 lb in 100 gal is 0.16 oz, 4.5 g, in a gallon.
        ProductRate rate = MassPerArea.FromPoundsPerAcre(1);
        var perGallon = LabelRate.ProductFor(rate.Weight!.Value, Area.FromAcres(1)) / (VolumePerArea.FromGallonsPerAcre(100) / VolumePerArea.FromGallonsPerAcre(1));
        Close(0.16, perGallon.Ounces);
        Assert.Equal(4.5, Math.Round(perGallon.Grams, 1));
    }

    [Fact]
    public void An_eighty_percent_powder_over_three_and_a_half_acres()
    {
        // Agrochemical and Pesticide Safety (an applicator's tutorial), examples 4 and 5: 3.5 acres at 15 gal and 3 lb per acre take
        // 52.5 gal with 10.5 lb; 2 lb of active ingredient per acre from an 80 % wettable powder are 2.5 lb of it.
        var field = Area.FromAcres(3.5);
        Close(52.5, LabelRate.ProductFor(VolumePerArea.FromGallonsPerAcre(15), field).Gallons);
        Close(10.5, LabelRate.ProductFor(MassPerArea.FromPoundsPerAcre(3), field).Pounds);
        var powder = ProductStrength.Percent(Fraction.FromPercent(80));
        Close(2.5, LabelRate.ProductFor(MassPerArea.FromPoundsPerAcre(2), powder).Weight!.Value.PoundsPerAcre);
        Close(2.0, LabelRate.ActiveIngredient(MassPerArea.FromPoundsPerAcre(2.5), powder).PoundsPerAcre);
    }

    [Fact]
    public void A_pound_per_acre_on_a_thousand_square_feet() =>
        // Arithmetic, not outside evidence.
        Close(10.413, LabelRate.ProductFor(MassPerArea.FromPoundsPerAcre(1), OneThousand).Grams);

    [Fact]
    public void Mixing_order_puts_suspensions_before_solutions_and_surfactants_last()
    {
        // Country Guide (provincial specialist): wettables, dry flowables, suspensions, emulsifiable concentrates, solutions, surfactants.
        FormulationClass[] order =
        [
            FormulationClass.WettablePowder, FormulationClass.DryFlowable, FormulationClass.SuspensionConcentrate,
            FormulationClass.EmulsifiableConcentrate, FormulationClass.Solution, FormulationClass.Surfactant,
        ];
        Assert.Equal(order, order.Reverse().Order());
    }
}

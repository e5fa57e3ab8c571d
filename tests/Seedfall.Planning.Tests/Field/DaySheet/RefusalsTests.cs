using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Plan;
using Sheet = Seedfall.Planning.Field.DaySheet;

namespace Seedfall.Planning.Tests.Field;

/// <summary>What the plan is stopped from is stopped on the sheet too: why, what instead, and nothing to write down as put on.</summary>
public sealed class RefusalsTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2011, 2023, InventedWeather.North);

    private static readonly Lawn Known = Lawns.Known(InventedWeather.North);

    private static readonly DateOnly Down = new(2023, 9, 4);

    [Fact]
    public void Over_the_yearly_maximum_the_spray_step_is_a_refusal()
    {
        // 13 of 16 fl oz per acre are used, 5 are asked: 3 are left.
        var step = Refused(Known with { PreEmergent = Known.PreEmergent! with { AppliedThisYear = VolumePerArea.FromFluidOuncesPerAcre(13) } }, Down, TaskKind.Spray);
        var wall = Assert.Single(step.Refusals);
        Assert.Equal("label.yearly-maximum", wall.Id);
        Assert.Contains("is above 16", wall.Statement, StringComparison.Ordinal);
        Assert.Contains("3 fl oz per acre", wall.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void A_powder_with_its_rate_as_a_volume_is_refused_on_the_sheet_too() =>
        Assert.Equal("mix.by-weight", Assert.Single(Refused(Known with { PreEmergent = Known.PreEmergent! with { Formulation = FormulationClass.DryFlowable } }, Down, TaskKind.Spray).Refusals).Id);

    [Fact]
    public void A_weighed_powder_is_on_the_sheet_and_in_the_record_by_weight()
    {
        var label = Known.PreEmergent! with { ActiveIngredient = "siduron", Formulation = FormulationClass.WettablePowder, Strength = ProductStrength.Percent(Fraction.FromPercent(50)), Rate = MassPerArea.FromPoundsPerAcre(8), MaximumRate = MassPerArea.FromPoundsPerAcre(12), MaximumPerYear = MassPerArea.FromPoundsPerAcre(24) };
        var steps = Of(Known with { PreEmergent = label }, Down).Steps;
        var mix = steps.Single(s => s.Id == "spray.pre-emergent.mix");
        Assert.Contains(Cautions.WeighId, mix.CautionIds);
        Assert.Contains(mix.Wear, w => w.Contains("respirator the label names", StringComparison.Ordinal));
        Assert.Contains(mix.Lines, l => l.Contains("of water with siduron ", StringComparison.Ordinal) && l.Contains(" dry oz) on a scale that shows ", StringComparison.Ordinal));
        var what = Assert.IsType<LogEntry.Applied>(Assert.Single(steps.Single(s => s.Id == "spray.pre-emergent").Records).Entry).What;
        Assert.Equal("siduron 50 % wettable powder", what.Product);
        Assert.Null(what.Amount.Volume);
        Assert.Equal(mix.Big[1].Value, what.Amount.Mass!.Value.Kilograms);
        Assert.Equal(0.5 * what.Amount.Mass.Value.Kilograms, Assert.Single(what.Actives).Amount.Kilograms, 12);
        Assert.True(what.Amount.Mass.Value <= LabelRate.ProductFor(label.Rate.Weight!.Value, what.Area));
    }

    [Fact]
    public void A_grass_the_label_does_not_name_refuses_the_spraying_and_leaves_the_rest_of_the_tank()
    {
        var lawn = Known with
        {
            PreEmergent = Known.PreEmergent! with { LabeledAtSeeding = [GrassSpecies.TallFescue] },
            TankPartners = [new TankPartner { Name = "wetting agent", Formulation = FormulationClass.Surfactant, Rate = VolumePerArea.FromFluidOuncesPerThousandSquareFeet(6.0) }],
        };
        var step = Refused(lawn, Down, TaskKind.Spray);
        Assert.All(step.Refusals, w => Assert.StartsWith("label.species.", w.Id, StringComparison.Ordinal));
        Assert.Contains(step.Refusals, w => w.Instead.Contains("change the mix", StringComparison.Ordinal));
        var spraying = Of(lawn, Down).Steps.Single(s => s.Id == "spray.conditioner");
        Assert.Empty(spraying.Refusals);
        Assert.Equal("wetting agent", Assert.IsType<LogEntry.Applied>(Assert.Single(spraying.Records).Entry).What.Product);
    }

    [Fact]
    public void Inside_the_wait_after_a_past_spray_seeding_is_refused_until_it_is_over()
    {
        // 75 days after Jul 10: Sep 23.
        var lawn = Known with { Sprayed = [new PastSpray { ActiveIngredient = "dithiopyr", Date = new DateOnly(2023, 7, 10), LabelSeedingIntervalDays = 75 }] };
        foreach (var day in new[] { Down, new DateOnly(2023, 9, 22) })
        {
            var wall = Assert.Single(Refused(lawn, day, TaskKind.Seed).Refusals);
            Assert.StartsWith("label.seeding-interval.", wall.Id, StringComparison.Ordinal);
            Assert.Contains("Sep 23, 2023 or later", wall.Instead, StringComparison.Ordinal);
        }

        Assert.DoesNotContain(Of(lawn, new DateOnly(2023, 9, 23)).Steps, s => s.Refusals.Count > 0);
    }

    [Fact]
    public void A_repeat_the_year_has_no_room_for_is_refused_where_weeds_are_looked_at()
    {
        var lawn = Known with { PreEmergent = Known.PreEmergent! with { AppliedThisYear = VolumePerArea.FromFluidOuncesPerAcre(9), RepeatAfterEmergenceDays = 28 } };
        var plan = Plan(lawn);
        var day = plan.Tasks.Single(t => t.Id == "look.weeds").Date;
        var step = Sheet.Of(lawn, plan, FieldLog.Empty, day).Steps.Single(s => s.Id == "look.weeds");
        Assert.Equal("label.yearly-maximum.repeat", Assert.Single(step.Refusals).Id);
        Assert.DoesNotContain(Sheet.Of(lawn, plan, FieldLog.Empty, Down).Steps, s => s.Refusals.Count > 0);
    }

    /// <summary>The day's one refused step of a kind; no step of that kind has anything to put on.</summary>
    private static DayStep Refused(Lawn lawn, DateOnly date, TaskKind kind)
    {
        var sheet = Of(lawn, date);
        var step = Assert.Single(sheet.Steps, s => s.Kind == kind && s.Refusals.Count > 0);
        Assert.All(step.Records, r => Assert.IsType<LogEntry.Note>(r.Entry));
        Assert.Empty(step.Checks);
        Assert.DoesNotContain(sheet.Steps.SelectMany(s => s.Records), r => r.Entry is LogEntry.Applied { What.Kind: var put } && put == (kind == TaskKind.Seed ? ApplicationKind.Seed : ApplicationKind.Pesticide));
        Assert.DoesNotContain(sheet.Steps.SelectMany(s => s.Records), r => kind == TaskKind.Seed && r.Entry is LogEntry.SeededDown);
        Assert.All(step.Refusals, w => Assert.True(w.Statement.Length > 0 && w.Instead.Length > 0 && w.Source.Length > 0));
        return step;
    }

    private static Sheet Of(Lawn lawn, DateOnly date) => Sheet.Of(lawn, Plan(lawn), FieldLog.Empty, date);

    private static RecoveryPlan Plan(Lawn lawn) => RecoveryPlanner.Plan(lawn, new Choices { Season = 2023, SeedDown = Down }, Weather, Tables.Trade);
}

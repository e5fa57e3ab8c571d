using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Validation.Choice;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Validation;

/// <summary>Rules for the seed-down day and their score, on invented weather.</summary>
public sealed class ChoiceTests
{
    private static readonly Place Somewhere = new(41.6, -93.6, 280.0);

    private static readonly ChoiceScene Scene = new(
        "rain", "invented", new PatchConditions { TurfShare = 0.3 }, [new SownGrass(new GerminationTraits(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0), 15000.0)], WateringRounds.RainOnly, new StandRule());

    [Fact]
    public void SoilAtSeventyIsActedOnThreeDaysAfterItIsReached()
    {
        // 25 degC, then 20 degC from day 50: the 5-day mean is at or below 21.11 degC when four of five days are cool.
        double[] soil = [.. Enumerable.Range(0, 120).Select(d => d < 50 ? 25.0 : 20.0)];
        Assert.Equal(53 + 3, SeedDownRules.BySoil(soil, 30, 100));
        Assert.Null(SeedDownRules.BySoil(soil, 30, 55));
        Assert.Equal(60, SeedDownRules.BySoil(soil, 60, 100));
        Assert.Null(SeedDownRules.BySoil([.. soil.Select(_ => 25.0)], 30, 100));
        Assert.Equal(30, SeedDownRules.BySoil([.. soil.Select(_ => 190.0 / 9.0)], 30, 100));
    }

    [Fact]
    public void SeasonsOfAStationGoTogetherInTheStandardError()
    {
        // By hand: mean 3/4, station sums -1/2 and +1/2, sqrt(2/1 (1/4 + 1/4)) / 4.
        double[][] stations = [[1.0, 0.0], [1.0, 1.0]];
        Assert.Equal(0.25, ChoiceScore.ClusteredError<double>(stations, x => x), 12);
        double[][] alike = [[1.0, 0.0], [0.0, 1.0], [1.0, 0.0]];
        Assert.Equal(0.0, ChoiceScore.ClusteredError<double>(alike, x => x), 12);
    }

    [Fact]
    public void ScoresAreSharesRegretsAndLeads()
    {
        static ChoiceSeason Season(int year, double seedfall, double soil, double calendar) => new(year, new Dictionary<string, RuleSeason>
        {
            [SeedDownRules.Seedfall] = new(10, seedfall, 4000.0 * seedfall),
            [SeedDownRules.Soil70] = new(null, soil, 0.0),
            [SeedDownRules.Calendar] = new(30, calendar, 2000.0 * calendar),
            [SeedDownRules.Hindsight] = new(12, 1.0, 5000.0),
        });
        var score = ChoiceScore.Of("two", [[Season(2001, 1.0, 0.0, 1.0), Season(2002, 1.0, 0.0, 0.0)], [Season(2001, 0.0, 0.0, 0.0), Season(2002, 1.0, 0.0, 1.0)]]);
        Assert.Equal(4, score.Seasons);
        Assert.Equal((0.75, 0.25, 0.6), (score.Rules[SeedDownRules.Seedfall].Success, score.Rules[SeedDownRules.Seedfall].Regret, score.Rules[SeedDownRules.Seedfall].PlantsOfHindsight));
        Assert.Equal((0.0, 1.0, 0.75), (score.Rules[SeedDownRules.Soil70].Success, score.Rules[SeedDownRules.Soil70].Regret, score.Rules[SeedDownRules.Soil70].Lead));
        Assert.Null(score.Rules[SeedDownRules.Soil70].MiddleDay);
        Assert.Equal((0.5, 0.25, 30), (score.Rules[SeedDownRules.Calendar].Success, score.Rules[SeedDownRules.Calendar].Lead, score.Rules[SeedDownRules.Calendar].MiddleDay!.Value));
        Assert.Null(ChoiceScore.Of("one", [[Season(2001, 1.0, 0.0, 1.0)]]).Rules[SeedDownRules.Calendar].LeadStandardError);
    }

    [Fact]
    public void TheDayChosenForASeasonDoesNotKnowIt()
    {
        var random = new SplitMix64(3);
        StandOutcome[] outcomes = [.. Enumerable.Range(0, 7 * 40).Select(_ => new StandOutcome(9000.0 * random.NextDouble(), null))];
        var changed = (StandOutcome[])outcomes.Clone();
        for (var date = 0; date < 40; date++)
        {
            changed[(4 * 40) + date] = new StandOutcome(date == 7 ? 90000.0 : 0.0, null);
        }

        var (one, other) = (Scores(outcomes), Scores(changed));
        Assert.Equal(DateChoice.Of(one, 4), DateChoice.Of(other, 4));
        Assert.Contains(Enumerable.Range(0, 7), season => season != 4 && DateChoice.Of(one, season) != DateChoice.Of(other, season));
    }

    [Fact]
    public void NoRuleBeatsHindsightAndHolesDropTheirSeason()
    {
        var notes = new List<string>();
        var history = new WeatherHistory(Somewhere, "invented", [.. Enumerable.Range(2000, 8).SelectMany(Days).Where(d => d.Date is not { Year: 2003, Month: 9, Day: 14 })], [], []);
        var station = ChoiceStation.Of(history, new DateOnly(2001, 8, 30), SoilHeatConstants.Shipped, notes)!;
        Assert.Empty(notes);
        var seasons = station.Try(Scene);
        Assert.Equal([2000, 2001, 2002, 2004, 2005, 2006, 2007], seasons.Select(s => s.Year));
        foreach (var season in seasons)
        {
            var best = season.Rules[SeedDownRules.Hindsight];
            Assert.All(season.Rules.Values, r => Assert.True(r.Stood <= best.Stood && r.PlantsPerM2 <= best.PlantsPerM2));
            Assert.Equal(29, season.Rules[SeedDownRules.Calendar].Day);
        }

        var scores = DateScores.Of((station.Stands(Scene), 1.0));
        Assert.All(seasons.Select((s, i) => (s, i)), x => Assert.Equal(DateChoice.Of(scores, x.i)?.Best, x.s.Rules[SeedDownRules.Seedfall].Day));
    }

    [Fact]
    public void AStationThatCannotBeScoredSaysWhy()
    {
        var few = new WeatherHistory(Somewhere, "few", [.. Enumerable.Range(2000, 3).SelectMany(Days)], [], []);
        var nowhere = few with { Station = null, StationName = "nowhere" };
        var report = Assert.Single(ChoiceValidation.Score([few, nowhere], [Scene], _ => new DateOnly(2001, 9, 1), SoilHeatConstants.Shipped));
        Assert.Null(report.Pooled);
        Assert.Contains("3 autumns without holes", Assert.Single(report.Stations[0].Notes), StringComparison.Ordinal);
        Assert.Contains("no position", Assert.Single(report.Stations[1].Notes), StringComparison.Ordinal);
    }

    private static DateScores Scores(StandOutcome[] outcomes) =>
        DateScores.Of((new StandTable([.. Enumerable.Range(2000, 7)], new CandidateDays(0, 40), new StandRule(), outcomes, new double[7], new int[7]), 1.0));

    /// <summary>An invented year.</summary>
    private static IEnumerable<WeatherDay> Days(int year)
    {
        var random = new SplitMix64((ulong)year);
        var departure = 0.0;
        for (var date = new DateOnly(year, 1, 1); date.Year == year; date = date.AddDays(1))
        {
            departure = (0.7 * departure) + (2.0 * random.NextNormal());
            var mean = 10.0 - (14.0 * Math.Cos(2.0 * Math.PI * (date.DayOfYear - 15) / 365.25)) + departure;
            yield return new WeatherDay(date, mean + 5.5, mean - 5.5, random.NextDouble() < 0.3 ? 12.0 * random.NextDouble() : 0.0);
        }
    }
}

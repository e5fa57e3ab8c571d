using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Tests.Field;

/// <summary>An invented season: seed down on September 8, cover rising from 40 to 90 % in sixty days, window open to October 5.</summary>
public sealed class CoverJudgingTests
{
    private static readonly DateOnly SeedDown = new(2026, 9, 8);

    private static readonly SeasonTiming Season = new()
    {
        Seasons = [2020],
        SeasonsDropped = [],
        SoilFan = [],
        ThisYear = [],
        SoilCool = [],
        Frost32 = [],
        Frost28 = [],
        Stand = [new(SeedDown.AddDays(24), 0.61)],
        StandWorking = new("simulated", [], "invented", Sureness.Computed),
        Window = new(new(2026, 8, 20), SeedDown, new(2026, 10, 5), 0.9),
        SeedDown = SeedDown,
        Phases = [new("seedbed", "Seedbed to emergence", SeedDown, SeedDown.AddDays(20))],
        Figures = [],
        OtherWindow = new(new(2026, 11, 20), new(2026, 12, 1), new(2027, 2, 20), null),
        OtherWindowName = "dormant seeding",
        CoverForecast = [.. Enumerable.Range(0, 61).Select(d => new CoverFanDay(SeedDown.AddDays(d), Rise(d) - 0.05 * Grown(d), Rise(d), Rise(d) + 0.05 * Grown(d)))],
    };

    [Fact]
    public void Before_anything_is_seen_a_picture_is_asked_for()
    {
        Assert.Equal((CoverStanding.NothingYet, CoverAction.Look), On(-5));
        Assert.Equal((CoverStanding.NothingYet, CoverAction.Look), On(12, (-3, 0.40)));
        Assert.Equal((CoverStanding.NothingYet, CoverAction.KeepOn), Short(CoverJudging.Judge(Season with { SeedDown = null }, null, [], SeedDown)));
    }

    [Fact]
    public void Within_the_band_nothing_is_changed() => Gen.Select(Gen.Int[1, 60], Gen.Double[-0.9, 0.9]).Sample((day, within) =>
        Assert.Equal((CoverStanding.AsForecast, CoverAction.KeepOn), On(day, (day, Rise(day) + within * 0.05 * Grown(day)))));

    [Fact]
    public void Above_it_the_lawn_is_ahead() => Assert.Equal((CoverStanding.Ahead, CoverAction.KeepOn), On(30, (30, Rise(30) + 0.2)));

    [Fact]
    public void Early_on_less_cover_than_entered_is_no_reason_to_act()
    {
        var judged = Judge(8, (8, 0.25));
        Assert.Equal((CoverStanding.Behind, CoverAction.Wait), Short(judged));
        Assert.Contains(judged.Reasons, r => r.Contains("correct the living cover in the notes", StringComparison.Ordinal));
    }

    [Fact]
    public void Seed_that_may_still_come_is_waited_for_while_the_window_allows()
    {
        var judged = Judge(18, (-2, 0.40), (18, 0.40));
        Assert.Equal((CoverStanding.Behind, CoverAction.Wait), Short(judged));
        Assert.Contains("wait until Sep 28", judged.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_seedlings_are_reseeded_while_the_window_holds()
    {
        var judged = Judge(24, (-2, 0.40), (24, 0.42));
        Assert.Equal((CoverStanding.Behind, CoverAction.Reseed), Short(judged));
        Assert.Contains("3 days of the window left", judged.Sentence, StringComparison.Ordinal);
        Assert.Equal(3.0, judged.Figures.Single(f => f.Id == "cover.days-left").Value);
        Assert.Equal(0.61, judged.Figures.Single(f => f.Id == "cover.chance-today").Value);
    }

    [Fact]
    public void On_its_last_day_the_window_still_holds_and_after_it_the_other_one_is_next()
    {
        Assert.Equal(CoverAction.Reseed, On(27, (-2, 0.40), (27, 0.42)).Action);
        var after = Judge(28, (-2, 0.40), (28, 0.42));
        Assert.Equal(CoverAction.ReseedLater, after.Action);
        Assert.Contains("dormant seeding from Nov 20", after.Sentence, StringComparison.Ordinal);
        Assert.Equal(CoverAction.Wait, CoverJudging.Judge(Season with { OtherWindow = null }, null, Pictures((-2, 0.40), (28, 0.42)), SeedDown.AddDays(28)).Action);
    }

    [Fact]
    public void Where_the_window_closes_before_the_slowest_grass_is_up_it_is_not_waited_for()
    {
        var early = Season with { Window = Season.Window! with { Closes = SeedDown.AddDays(19) } };
        Assert.Equal(CoverAction.Reseed, CoverJudging.Judge(early, null, Pictures((-2, 0.40), (18, 0.38)), SeedDown.AddDays(18)).Action);
    }

    [Fact]
    public void Slow_seedlings_get_the_planned_feeding_and_nothing_beyond_it()
    {
        var slow = Pictures((-2, 0.40), (30, 0.40 + 0.5 * (Rise(30) - 0.40)));
        var feed = new FeedPlan([Feeding("starter-1", 0), Feeding("starter-2", 28)], Number, null, null, []);
        var judged = CoverJudging.Judge(Season, feed, slow, SeedDown.AddDays(30));
        Assert.Equal((CoverStanding.Behind, CoverAction.Feed), Short(judged));
        Assert.Contains("as planned for Oct 6", judged.Sentence, StringComparison.Ordinal);
        Assert.Contains("nothing beyond it", judged.Sentence, StringComparison.Ordinal);
        Assert.Equal(CoverAction.Wait, CoverJudging.Judge(Season, null, slow, SeedDown.AddDays(30)).Action);
        Assert.Equal(CoverAction.Wait, CoverJudging.Judge(Season, feed, slow, SeedDown.AddDays(50)).Action);
    }

    [Fact]
    public void A_low_reading_within_the_error_of_one_picture_is_doubted_not_acted_on()
    {
        var one = CoverJudging.Judge(Season, null, [Picture(30, Rise(30) - 0.12, whole: false)], SeedDown.AddDays(30));
        Assert.Equal(CoverStanding.AsForecast, one.Standing);
        Assert.Contains(one.Reasons, r => r.Contains("take more pictures", StringComparison.Ordinal));
        var nine = CoverJudging.Judge(Season, null, [.. Enumerable.Repeat(Picture(30, Rise(30) - 0.12, whole: false), 9)], SeedDown.AddDays(30));
        Assert.Equal(CoverStanding.Behind, nine.Standing);
    }

    [Fact]
    public void Old_pictures_are_said_to_be_old_and_later_ones_are_not_looked_at()
    {
        Assert.Contains(Judge(45, (20, 0.42)).Reasons, r => r.Contains("25 days old", StringComparison.Ordinal));
        Assert.Equal(CoverStanding.NothingYet, On(10, (20, 0.42)).Standing);
    }

    [Fact]
    public void Any_pictures_on_any_day_get_an_answer_with_a_sentence() =>
        Gen.Select(Gen.Int[-40, 90], Gen.Select(Gen.Int[-40, 90], Gen.Double[0.0, 1.0]).Array[0, 6]).Sample((today, pictures) =>
        {
            var judged = CoverJudging.Judge(Season, null, Pictures(pictures), SeedDown.AddDays(today));
            Assert.EndsWith(".", judged.Sentence, StringComparison.Ordinal);
            Assert.All(judged.Figures, f => Assert.NotEmpty(f.Working.Source));
            if (judged.Action == CoverAction.Reseed)
            {
                Assert.True(SeedDown.AddDays(today) <= Season.Window!.Closes, "never reseed after the window");
            }
        });

    [Fact]
    public void More_pictures_of_one_day_narrow_the_range_but_never_below_the_error_of_measuring() => Gen.Int[1, 30].Sample(n =>
    {
        double Wide(int count)
        {
            var pooled = Assert.Single(PooledCover.ByDay(Enumerable.Range(0, count).Select(i => Picture(5, 0.5 + (i % 2 == 0 ? 0.05 : -0.05), whole: false))));
            return pooled.High.Value - pooled.Low.Value;
        }

        Assert.True(Wide(4 * n) <= Wide(2 * n) + 1e-12);
        Assert.True(Wide(2 * n) >= 0.08 - 1e-12);
    });

    private static double Grown(int day) => Math.Max(0.0, day - 10) / 50.0;

    private static double Rise(int day) => 0.40 + 0.50 * Grown(day);

    private static MeasuredCover Picture(int day, double cover, bool whole = true) =>
        new(SeedDown.AddDays(day), Fraction.Of(Math.Clamp(cover, 0.0, 1.0)), Fraction.Of(Math.Clamp(cover - 0.04, 0.0, 1.0)), Fraction.Of(Math.Clamp(cover + 0.04, 0.0, 1.0)), whole);

    private static IReadOnlyList<MeasuredCover> Pictures(params (int Day, double Cover)[] pictures) => [.. pictures.Select(p => Picture(p.Day, p.Cover))];

    private static CoverProgress Judge(int today, params (int, double)[] pictures) => CoverJudging.Judge(Season, null, Pictures(pictures), SeedDown.AddDays(today));

    private static (CoverStanding Standing, CoverAction Action) On(int today, params (int, double)[] pictures) => Short(Judge(today, pictures));

    private static (CoverStanding Standing, CoverAction Action) Short(CoverProgress judged) => (judged.Standing, judged.Action);

    private static Figure Number { get; } = new("n", "n", QuantityKind.Number, 1.0, new Working("n", [], "invented", Sureness.Computed));

    private static Feeding Feeding(string id, int days) => new(id, "the starter", days, Number, Number, Number, Number, Number, "invented") { Date = SeedDown.AddDays(days) };
}

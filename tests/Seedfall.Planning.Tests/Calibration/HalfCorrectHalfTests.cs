using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Calibration.Spreader;
using static Seedfall.Planning.Tests.Calibration.Spreaders;

namespace Seedfall.Planning.Tests.Calibration;

public sealed class HalfCorrectHalfTests
{
    private static readonly SpreadJob Job = new("seed", "lawn", Rate(6.0), Area.FromThousandSquareFeet(4.0), Ahead()) { Reserve = Mass.FromPounds(3.0) };

    [Fact]
    public void A_blind_start_is_low_and_puts_in_half()
    {
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(new SpreaderEntry.FirstFall(1.0, SpreadMaterial.CoarseSeed) { Id = new Guid(9, 0, 0, new byte[8]), At = Morning }), Job));
        Assert.Equal(SpreadPart.FirstHalf, step.Part);
        Assert.InRange(step.Opening, 1.0, 3.0);
        Assert.True(step.Expected.ChanceUpTo(Rate(6.6)) >= 1.0 - HalfCorrectHalf.OverChance);
        Assert.Equal(12.0, Mass.FromKilograms(step.Figures.Single(f => f.Id == "spread.put-in").Value).Pounds, 6);
        Assert.Contains("thin spots stay in the bag", step.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_is_known_no_opening_is_told_but_the_first_grains_are_asked_for()
    {
        var fall = new SpreaderEntry.FirstFall(1.0, SpreadMaterial.CoarseSeed) { Id = new Guid(9, 0, 0, new byte[8]), At = Morning };
        var struck = new SpreaderEntry.Struck(fall.Id, "misread") { Id = new Guid(10, 0, 0, new byte[8]), At = Morning };
        foreach (var spreader in new[] { With(), With(fall, struck) })
        {
            var step = Assert.IsType<SpreadStep.FirstGrains>(HalfCorrectHalf.Next(spreader, Job));
            Assert.Contains("Nothing is known", step.Sentence, StringComparison.Ordinal);
            Assert.Empty(step.Figures);
        }

        Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(fall), Job));
        Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 1.0, 0.0)), Job));
    }

    [Fact]
    public void After_a_good_first_half_the_rest_goes_on_near_the_same_opening()
    {
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 5.0, 2.9, job: "seed")), Job));
        Assert.Equal(SpreadPart.SecondHalf, step.Part);
        Assert.InRange(step.Opening, 4.75, 5.5);
        Assert.Equal(3.1, step.Aim.PoundsPerThousandSquareFeet, 6);
    }

    [Fact]
    public void A_thin_first_go_is_followed_by_more_of_the_first_half()
    {
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 3.0, 0.7, job: "seed")), Job));
        Assert.Equal(SpreadPart.MoreOfFirstHalf, step.Part);
        Assert.Equal(2.3, step.Aim.PoundsPerThousandSquareFeet, 6);
        Assert.True(step.Opening > 3.0);
    }

    [Fact]
    public void What_gave_out_is_finished_at_the_same_opening()
    {
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 5.0, 4.0, thousands: 3.0, job: "seed")), Job));
        Assert.Equal(SpreadPart.FinishPass, step.Part);
        Assert.Equal(5.0, step.Opening);
        Assert.Equal(1.0, step.Ground.ThousandSquareFeet, 6);
        Assert.Equal(4.0, Mass.FromKilograms(step.Figures.Single(f => f.Id == "spread.put-in").Value).Pounds, 6);
    }

    [Fact]
    public void A_rate_hardly_known_has_no_figure_and_one_learned_from_a_run_has()
    {
        var fall = new SpreaderEntry.FirstFall(1.0, SpreadMaterial.CoarseSeed) { Id = new Guid(9, 0, 0, new byte[8]), At = Morning };
        var blind = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(fall), Job));
        Assert.True(blind.Expected.Vague);
        Assert.DoesNotContain(blind.Figures, f => f.Id == "spread.expected");
        var learned = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(fall, Run(1, 5.0, 2.9, job: "seed")), Job));
        Assert.False(learned.Expected.Vague);
        Assert.Contains(learned.Figures, f => f.Id == "spread.expected");
    }

    [Fact]
    public void A_second_half_that_gave_out_tells_by_how_much_finishing_goes_beyond_the_plan()
    {
        // 4 x 3 lb, then 12 lb on 3.75 of 4 thousands: 3.2 lb per thousand, so 0.8 lb are lacking for the rest.
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 5.0, 3.0, job: "seed"), Run(2, 5.0, 3.2, thousands: 3.75, job: "seed")), Job));
        Assert.Equal(SpreadPart.FinishPass, step.Part);
        Assert.Equal(0.8, Mass.FromKilograms(step.Figures.Single(f => f.Id == "spread.more").Value).Pounds, 6);
        Assert.Contains("With it 12.8 oz (363 g) more goes on than the 24 lb", step.Sentence, StringComparison.Ordinal);
        Assert.Contains("planned, 3.3 %", step.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_first_half_that_gave_out_goes_beyond_nothing()
    {
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(With(Run(1, 5.0, 4.0, thousands: 3.0, job: "seed")), Job));
        Assert.DoesNotContain(step.Figures, f => f.Id == "spread.more");
        Assert.DoesNotContain("planned", step.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Ground_that_has_too_much_is_closed_and_the_rest_goes_on()
    {
        var spreader = With(Run(1, 7.0, 12.0, thousands: 1.0, job: "seed"));
        var closed = Assert.Single(JobProgress.Of(spreader, Job).Closed);
        Assert.Equal(12.0, closed.Rate.PoundsPerThousandSquareFeet, 6);
        var step = Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(spreader, Job));
        Assert.Equal(3.0, step.Ground.ThousandSquareFeet, 6);
        Assert.True(step.Opening < 7.0);
        Assert.Contains("Keep off", step.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_over_all_the_ground_stops_the_work()
    {
        var step = Assert.IsType<SpreadStep.Over>(HalfCorrectHalf.Next(With(Run(1, 7.0, 7.5, job: "seed")), Job));
        Assert.Contains("Stop", step.Sentence, StringComparison.Ordinal);
        Assert.Contains("25 % more than wanted", step.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Close_enough_is_enough() =>
        Assert.IsType<SpreadStep.Enough>(HalfCorrectHalf.Next(With(Run(1, 5.0, 3.0, job: "seed"), Run(2, 5.0, 2.8, job: "seed")), Job));

    [Fact]
    public void A_target_beyond_wide_open_is_refused_with_what_would_do()
    {
        var heavy = Job with { Target = Rate(40.0) };
        var step = Assert.IsType<SpreadStep.NoOpening>(HalfCorrectHalf.Next(With(Run(1, 10.0, 6.0, job: "other"), Run(2, 9.0, 5.0, job: "other")), heavy));
        Assert.Contains(step.Instead, s => s.Contains("4 times", StringComparison.Ordinal));
    }

    [Fact]
    public void A_target_below_the_least_that_flows_is_refused()
    {
        var coarse = With(Run(1, 1.0, 30.0, job: "other")) with { Scale = new(0.0, 10.0, 1.0) };
        Assert.IsType<SpreadStep.NoOpening>(HalfCorrectHalf.Next(coarse, Job with { Target = Rate(1.0) }));
    }

    [Fact]
    public void Runs_of_another_job_are_learned_from_but_not_counted()
    {
        var spreader = With(Run(1, 5.0, 3.0, job: "starter"));
        Assert.Empty(JobProgress.Of(spreader, Job).Runs);
        Assert.Equal(SpreadPart.FirstHalf, Assert.IsType<SpreadStep.Spread>(HalfCorrectHalf.Next(spreader, Job)).Part);
    }

    [Fact]
    public void Whatever_was_weighed_the_opening_is_on_the_scale()
    {
        var runs = Gen.Select(Gen.Int[0, 40], Gen.Double[0.0, 30.0], Gen.Double[0.2, 4.0]).Array[0, 6];
        Gen.Select(runs, Gen.Double[0.5, 30.0]).Sample((weighed, target) =>
        {
            var spreader = With([.. weighed.Select((r, i) => Run(i + 1, r.Item1 * 0.25, r.Item2, thousands: r.Item3, job: "seed"))]);
            if (HalfCorrectHalf.Next(spreader, Job with { Target = Rate(target) }) is SpreadStep.Spread step)
            {
                Assert.Contains(step.Opening, spreader.Scale.Openings);
                Assert.True(step.Aim > MassPerArea.Zero && step.Ground > Area.Zero);
            }
        }, iter: 300);
    }
}

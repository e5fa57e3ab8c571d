using CsCheck;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

public sealed class TimetableBruteForceTests
{
    [Fact]
    public void TheSolverFindsWhatTryingEveryStartFinds() => Compare(SmallProblem.OneRound, 150);

    [Fact]
    public void AlsoWithTwoRoundsAndCycles() => Compare(SmallProblem.TwoRounds, 100);

    [Fact]
    public void WhatIsProvedImpossibleIsSo() => SmallProblem.OneRound.Sample(
        problem =>
        {
            var exists = BruteForce.Least(problem) is not null;
            var decided = Decision.Of(problem, new WorkBudget(0.5), 0.5, wanted: false);
            Assert.Equal(exists, decided.Placement is not null);
            Assert.Equal(!exists, decided.Refuted);
        },
        iter: 80);

    private static void Compare(Gen<TimetableProblem> problems, int times) => problems.Sample(
        problem =>
        {
            var board = Board.Of(problem, TimerLimits.Choices(problem)[0]);
            var least = BruteForce.Least(problem);
            if (board.Jobs.Any(job => job.Starts.Count == 0))
            {
                Assert.Null(least);
                return;
            }

            var solved = SolverSchedule.Solve(board, null, new WorkBudget(5.0), 5.0, 0);
            Assert.Equal(least is null ? SolverAnswer.None : SolverAnswer.Found, solved.Answer);
            Assert.Equal(least, solved.Placement?.Cost(board));
            Assert.True(FluidBound.Least(board) <= (least ?? long.MaxValue));
            Assert.Equal(least ?? 0, solved.Bound);
        },
        iter: times);
}

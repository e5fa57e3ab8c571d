using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>A phase as fitted, and its timetables.</summary>
internal sealed record TriedPhase(PhaseFit Fit, PhaseTimetables Times)
{
    /// <summary>
    /// Rounds a week that find no allowed time: none where there is a timetable; else what the first look misses, and at least one round for
    /// each day without its timetable.
    /// </summary>
    internal double MissingRounds => Times.Holds ? 0.0 : Math.Max(Fit.ShortRounds, Times.Daily is null ? 1.0 : FailingDays);

    private int FailingDays => Times.Proofs.Where(day => day.Proof is not TimetableProof.Found).Sum(day => int.PopCount((int)day.Days));
}

/// <summary>Every phase of a scene tried.</summary>
internal sealed record WaterTrial(IReadOnlyList<TriedPhase> Phases)
{
    /// <summary>Work for the solver over all phases and days together.</summary>
    private const double Work = 0.3;

    internal static WaterTrial Of(WaterScene scene, ProofDetail detail)
    {
        var budget = new WorkBudget(Work);
        return new([.. WaterFitting.Fit(scene).Select(fit => new TriedPhase(fit, PhaseTimetable.Of(scene, fit, detail, detail == ProofDetail.Explained ? null : budget)))]);
    }

    /// <summary>
    /// The trial with its worst phase looked into: what forbids it, or its timetable after all, where only the shared work had run out; then
    /// the next worst is looked into. The failure is null where all hold.
    /// </summary>
    internal (WaterTrial Trial, TimetableProof? Failure) Settled(WaterScene scene)
    {
        var trial = this;
        while (trial.Worst is { } worst)
        {
            var times = PhaseTimetable.Of(scene, worst.Fit, ProofDetail.Explained);
            trial = new([.. trial.Phases.Select(phase => phase == worst ? phase with { Times = times } : phase)]);
            if (!times.Holds)
            {
                return (trial, times.Proofs.Where(day => day.Proof is not TimetableProof.Found).OrderByDescending(day => day.Proof is TimetableProof.Impossible).First().Proof);
            }
        }

        return (trial, null);
    }

    /// <summary>True where every phase the proof rests on has its timetables.</summary>
    internal bool Holds => Binding.All(phase => phase.Times.Holds);

    /// <summary>The binding phase that is refused, or not proven, by most rounds; null where all hold.</summary>
    internal TriedPhase? Worst => Binding.Where(phase => !phase.Times.Holds).OrderByDescending(phase => phase.Times.Refused).ThenByDescending(phase => phase.Fit.ShortMinutes).ThenByDescending(phase => phase.MissingRounds).FirstOrDefault();

    /// <summary>Rounds a week, over all binding phases, that find no allowed time.</summary>
    internal double MissingRounds => Binding.Sum(phase => phase.MissingRounds);

    internal TriedPhase Phase(string id) => Phases.First(phase => phase.Fit.Need.Phase.Id == id);

    private IEnumerable<TriedPhase> Binding => Phases.Where(phase => phase.Fit.Need.Binding);
}

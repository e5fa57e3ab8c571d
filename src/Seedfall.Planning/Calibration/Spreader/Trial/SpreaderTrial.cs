using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader.Trial;

/// <summary>Ways to find the next opening.</summary>
public enum OpeningWay
{
    /// <summary>Seedfall's fit.</summary>
    Fit,

    /// <summary>The last opening times wanted rate over last rate, with the fit's own first opening.</summary>
    InProportion,

    /// <summary>The same counted from the opening at which the first grains fell.</summary>
    FromFirstFall,

    /// <summary>Somebody who knows the curve, but not the day's noise.</summary>
    KnowsTheCurve,
}

/// <summary>How a trial came out.</summary>
/// <param name="Worst">Rate on the worst part of the ground over the target, less 1 [-].</param>
/// <param name="Passes">Times the ground was walked.</param>
/// <param name="Refused">True where it was said that no opening does it.</param>
internal sealed record TrialOutcome(double Worst, int Passes, bool Refused);

/// <summary>One made-up spreader, one piece of ground, walked to the end.</summary>
internal sealed class SpreaderTrial
{
    /// <summary>Walk, overlap and setting of one pass, as a standard deviation of ln(rate).</summary>
    internal const double PassSd = 0.05;

    /// <summary>Lot and day, as a standard deviation of ln(rate).</summary>
    internal const double DaySd = 0.10;

    /// <summary>Weighing, kg.</summary>
    internal const double WeighingKg = 0.01;

    private const int MostRuns = 12;
    private const string Lawn = "trial";
    private readonly MadeUpSpreader _true;
    private readonly SplitMix64 _chance;
    private readonly SpreadJob _job;
    private readonly double _day;
    private readonly TrialGround _strips = new();
    private KeptSpreader _kept;

    /// <param name="draw">Spreader, target and ground.</param>
    /// <param name="earlier">Runs kept from other days.</param>
    /// <param name="material">What is spread.</param>
    /// <param name="shift">Its shift of ln(rate).</param>
    /// <param name="seed">Decides the noise.</param>
    internal SpreaderTrial(TrialDraw draw, IReadOnlyList<SpreaderEntry> earlier, SpreadMaterial material, double shift, ulong seed)
    {
        (_true, _chance) = (draw.Made, new SplitMix64(seed));
        _day = shift + DaySd * _chance.NextNormal();
        _job = new(earlier.Count == 0 ? "job" : "later", Lawn, draw.Target, draw.Ground, new(material, material.ToString(), new DateOnly(2026, 9, 1 + earlier.Count)));
        _kept = new() { Id = "made-up", Name = "made-up", Scale = new(0.0, draw.Made.Steps, 1.0), Entries = earlier };
        if (earlier.Count == 0)
        {
            NoteFirstFall();
        }
    }

    /// <summary>Everything written about the spreader.</summary>
    internal IReadOnlyList<SpreaderEntry> Entries => _kept.Entries;

    internal TrialOutcome Run(OpeningWay way, bool oneGo)
    {
        for (var k = 0; k < MostRuns; k++)
        {
            var step = HalfCorrectHalf.Next(_kept, _job, oneGo);
            var (part, aim, ground) = step switch
            {
                SpreadStep.Spread s => (s.Part, s.Aim, s.Ground),
                SpreadStep.NoOpening n when way != OpeningWay.Fit => (n.Part, n.Aim, JobProgress.Of(_kept, _job).Open),
                _ => (SpreadPart.FirstHalf, MassPerArea.Zero, Area.Zero),
            };
            if (ground <= Area.Zero)
            {
                return Outcome(step is SpreadStep.NoOpening);
            }

            // Correcting needs something to go by: the first run of a job is the same for all but the one who knows.
            var opening = part == SpreadPart.FinishPass || way == OpeningWay.Fit || (way != OpeningWay.KnowsTheCurve && Last is null) ? Chosen(step)
                : way == OpeningWay.KnowsTheCurve ? Known(aim) : InProportion(aim, way == OpeningWay.FromFirstFall ? _kept.FirstFalls[0].Opening : 0.0);
            Walk(opening, part, aim, ground);
        }

        return Outcome(refused: false);
    }

    internal SpreadJob Job => _job;

    private SpreaderEntry.Run? Last => JobProgress.Of(_kept, _job).Runs.LastOrDefault();

    private double InProportion(MassPerArea aim, double from)
    {
        var last = Last!;
        var wanted = last.Used > Mass.Zero ? from + (last.Opening - from) * (aim / last.Rate) : last.Opening + 0.1 * _true.Steps;
        return Math.Clamp(Math.Round(wanted), 1.0, _true.Steps);
    }

    private double Chosen(SpreadStep step) => step is SpreadStep.Spread spread ? spread.Opening : _kept.Scale.Openings.First(o => o > (_kept.FirstFalls is [var fall, ..] ? fall.Opening : 0.0));

    private double Known(MassPerArea aim) =>
        _kept.Scale.Openings.MinBy(o => Math.Abs(_true.RateKgM2(_kept.Scale.Place(o)) * Math.Exp(_day) - aim.KilogramsPerSquareMeter));

    /// <summary>Opens slowly until grains are seen, which takes a little more than where flow begins; read to the step.</summary>
    private void NoteFirstFall()
    {
        var seen = _true.DeadPlace + 0.01 + 0.015 * Math.Abs(_chance.NextNormal());
        _kept = _kept with { Entries = [new SpreaderEntry.FirstFall(Math.Round(seen * _true.Steps), _job.Ahead.Material) { Id = Guid.AllBitsSet, At = DateTimeOffset.UnixEpoch }] };
    }

    /// <summary>Walks until the ground is covered or the hopper is empty.</summary>
    private void Walk(double opening, SpreadPart part, MassPerArea aim, Area ground)
    {
        var rate = _true.RateKgM2(_kept.Scale.Place(opening)) * Math.Exp(_day + PassSd * _chance.NextNormal());
        var putIn = part == SpreadPart.FinishPass ? double.MaxValue : aim.KilogramsPerSquareMeter * ground.SquareMeters;
        var needed = rate * ground.SquareMeters;
        var gaveOut = needed > putIn * 1.02;
        var covered = gaveOut ? ground.SquareMeters * putIn / needed : ground.SquareMeters;

        // What gave out was weighed when it was put in; what is left over is weighed again.
        var used = needed < 1.0e-3 ? 0.0 : Math.Max(0.0, rate * covered + WeighingKg * _chance.NextNormal());
        var closed = JobProgress.Of(_kept, _job).Closed.Count;
        _strips.Take(covered / _job.Ground.SquareMeters, rate);
        _kept = _kept with
        {
            Entries =
            [
                .. _kept.Entries,
                new SpreaderEntry.Run
                {
                    Id = new Guid(_kept.Entries.Count + 1, 0, 0, new byte[8]),
                    At = new DateTimeOffset(_job.Ahead.Day, new TimeOnly(9, 0), TimeSpan.Zero).AddMinutes(_kept.Entries.Count),
                    Material = _job.Ahead.Material,
                    What = _job.Ahead.What,
                    Opening = opening,
                    Covered = Area.FromSquareMeters(covered),
                    Used = Mass.FromKilograms(used),
                    LawnId = Lawn,
                    JobId = _job.Id,
                },
            ],
        };
        var after = JobProgress.Of(_kept, _job);
        _strips.After(passDone: after.PassCovered <= Area.Zero, closed: after.Closed.Count > closed);
    }

    private TrialOutcome Outcome(bool refused) => new(_strips.Worst(_job.Target.KilogramsPerSquareMeter), _strips.Passes, refused);
}

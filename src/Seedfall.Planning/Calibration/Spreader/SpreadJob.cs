using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>An amount to be put evenly on a piece of ground in two halves.</summary>
/// <param name="Id">Stable id on its lawn, for example <c>seed-2026</c>; its runs carry it.</param>
/// <param name="LawnId">The lawn.</param>
/// <param name="Target">Rate wanted in all; above 0.</param>
/// <param name="Ground">Ground it goes on; above 0.</param>
/// <param name="Ahead">What is put in, and how it is walked.</param>
public sealed record SpreadJob(string Id, string LawnId, MassPerArea Target, Area Ground, RunAhead Ahead)
{
    /// <summary>Kept apart for thin spots; never part of the halves.</summary>
    public Mass Reserve { get; init; }

    /// <summary>All that goes through the spreader.</summary>
    public Mass Whole => Mass.FromKilograms(Target.KilogramsPerSquareMeter * Ground.SquareMeters);
}

/// <summary>Ground that already has more than wanted and gets nothing more.</summary>
public sealed record ClosedGround(Area Ground, MassPerArea Rate);

/// <summary>How far a job has come, run by run.</summary>
public sealed record JobProgress
{
    /// <summary>Passes that leave less than this share of the ground out count as complete.</summary>
    private const double Complete = 0.98;

    /// <summary>Ground whose rate is within this share of the target is as it should be.</summary>
    public const double Close = 0.10;

    private JobProgress()
    {
    }

    /// <summary>Runs of the job, the oldest first.</summary>
    public required IReadOnlyList<SpreaderEntry.Run> Runs { get; init; }

    /// <summary>Ground still worked on.</summary>
    public required Area Open { get; init; }

    /// <summary>Rate on the open ground from complete passes.</summary>
    public required MassPerArea Done { get; init; }

    /// <summary>Ground the present pass has covered; zero between passes.</summary>
    public required Area PassCovered { get; init; }

    /// <summary>Rate of the present pass where it has been.</summary>
    public required MassPerArea PassRate { get; init; }

    /// <summary>Complete passes.</summary>
    public required int Passes { get; init; }

    /// <summary>Ground given up because it has too much.</summary>
    public required IReadOnlyList<ClosedGround> Closed { get; init; }

    /// <summary>All that has been put on.</summary>
    public Mass Used => Mass.FromKilograms(Runs.Sum(r => r.Used.Kilograms));

    /// <summary>Follows the job's runs. A run that gave out before the end leaves its pass open until the rest is covered.</summary>
    public static JobProgress Of(KeptSpreader spreader, SpreadJob job)
    {
        ArgumentNullException.ThrowIfNull(spreader);
        ArgumentNullException.ThrowIfNull(job);
        if (job.Target <= MassPerArea.Zero || job.Ground <= Area.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(job), job.Target, $"a target and a ground above 0 are needed, the ground was {job.Ground}");
        }

        IReadOnlyList<SpreaderEntry.Run> runs = [.. spreader.Runs.Where(r => r.LawnId == job.LawnId && r.JobId == job.Id)];
        var (openM2, doneKg, coveredM2, usedKg) = (job.Ground.SquareMeters, 0.0, 0.0, 0.0);
        var (closed, targetKg) = (new List<ClosedGround>(), job.Target.KilogramsPerSquareMeter);
        var passes = 0;

        // A run in which nothing fell put the spreader nowhere.
        foreach (var run in runs.Where(r => r.Used > Mass.Zero))
        {
            coveredM2 += run.Covered.SquareMeters;
            usedKg += run.Used.Kilograms;
            if (coveredM2 >= Complete * openM2)
            {
                doneKg += usedKg / openM2;
                passes++;
                (coveredM2, usedKg) = (0.0, 0.0);
            }
            else if (doneKg + usedKg / coveredM2 > targetKg * (1.0 + Close))
            {
                closed.Add(new(Area.FromSquareMeters(coveredM2), MassPerArea.FromKilogramsPerSquareMeter(doneKg + usedKg / coveredM2)));
                openM2 -= coveredM2;
                (coveredM2, usedKg) = (0.0, 0.0);
            }
        }

        return new()
        {
            Runs = runs,
            Open = Area.FromSquareMeters(openM2),
            Done = MassPerArea.FromKilogramsPerSquareMeter(doneKg),
            PassCovered = Area.FromSquareMeters(coveredM2),
            PassRate = MassPerArea.FromKilogramsPerSquareMeter(coveredM2 > 0.0 ? usedKg / coveredM2 : 0.0),
            Closed = closed,
            Passes = passes,
        };
    }
}

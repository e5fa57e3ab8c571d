using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Judgment.Survey.Causes;
using Seedfall.Planning.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.WalkOver.Steps;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver;

/// <summary>A step as it lies open.</summary>
/// <param name="Leaf">The form's state: what stands in the fields, stamp, what met.</param>
/// <param name="Step">The step.</param>
/// <param name="Patch">The patch it is walked over, as stored.</param>
/// <param name="Address">Where it is posted.</param>
public sealed record OpenWalk(OpenLeaf Leaf, StepLeaf Step, Patch Patch, string Address)
{
    public PatchSurvey Survey => Patch.Survey ?? new();
}

/// <summary>The sum-up of one patch's walk.</summary>
public sealed record WalkSum(StoredLawn Stored, Patch Patch, CauseReport Report, IReadOnlyList<Figure> Figures)
{
    /// <summary>True where the lawn was changed after the page was shown.</summary>
    public bool Met { get; init; }
}

/// <summary>Walking over a patch: opening and saving a step, summing up, taking a cause over.</summary>
internal sealed class WalkWork(LawnBook book, LeafWork leaves, TimeProvider clock)
{
    /// <summary>Null where the lawn, the patch, the step or the throw does not exist.</summary>
    /// <param name="number">For the throws only: the throw's number from 1, or null for a new one.</param>
    public async Task<OpenWalk?> Open(string id, string patchId, string stepId, string? number, UnitSystem system, CancellationToken cancellation)
    {
        if (Walk.Find(stepId) is not { } step || await book.Find(id, cancellation) is not { } stored || IndexOf(stored.Lawn, patchId) is not { } index)
        {
            return null;
        }

        var patch = stored.Lawn.Patches[index];
        var throws = patch.Survey?.Quadrats.Count ?? 0;
        if (step.Step != WalkStep.Quadrats)
        {
            return number is null ? Lay(stored, step, index, isNew: false, system, Walk.Address(id, patchId, step)) : null;
        }

        if (number is null)
        {
            return Lay(stored, new QuadratStep(throws), index, isNew: true, system, Walk.Address(id, patchId, step));
        }

        return int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n >= 1 && n <= throws
            ? Lay(stored, new QuadratStep(n - 1), index, isNew: false, system, FormattableString.Invariant($"{Walk.Address(id, patchId, step)}/{n}"))
            : null;
    }

    /// <summary>Stores the posted answers; what is returned is what to show.</summary>
    public async Task<(SaveResult Result, OpenWalk Shown)> Save(OpenWalk open, Entries posted, string stamp, CancellationToken cancellation)
    {
        var (result, shown) = await leaves.Save(open.Leaf, posted, stamp, cancellation);
        return (result, open with { Leaf = shown });
    }

    /// <summary>Takes the step back: as if it had not been looked at.</summary>
    public async Task<(SaveResult Result, OpenWalk Shown)> Clear(OpenWalk open, string stamp, CancellationToken cancellation)
    {
        var (result, shown) = await leaves.Remove(open.Leaf, stamp, cancellation);
        return (result, open with { Leaf = shown });
    }

    /// <summary>Null where there is no such lawn or patch.</summary>
    public async Task<WalkSum?> Sum(string id, string patchId, CancellationToken cancellation) =>
        await book.Find(id, cancellation) is { } stored && IndexOf(stored.Lawn, patchId) is { } index
            ? new(stored, stored.Lawn.Patches[index], SuggestedCauses.Of(stored.Lawn.Patches[index]), SurveyFigures.Of(stored.Lawn.Patches[index]))
            : null;

    /// <summary>The adviser takes a suggested cause as the patch's own; refused where it is not suggested or has no entry.</summary>
    public async Task<SaveResult> Take(WalkSum sum, string cause, int version, CancellationToken cancellation) =>
        sum.Report.Suggestions.FirstOrDefault(s => s.Cause.ToString() == cause)?.Facts.Entry is { } entry
            ? await Store(sum, sum.Patch with { Cause = entry, CauseCured = sum.Patch.CauseCured && sum.Patch.Cause == entry }, version, cancellation)
            : SaveResult.Refused;

    /// <summary>Drops what was found, to walk the patch anew.</summary>
    public Task<SaveResult> Anew(WalkSum sum, int version, CancellationToken cancellation) => Store(sum, sum.Patch with { Survey = null }, version, cancellation);

    private async Task<SaveResult> Store(WalkSum sum, Patch changed, int version, CancellationToken cancellation)
    {
        var lawn = sum.Stored.Lawn with { Patches = [.. sum.Stored.Lawn.Patches.Select(p => p.Id == changed.Id ? changed : p)] };
        return sum.Stored.Row.Version != version ? SaveResult.Conflict : await book.Save(sum.Stored.Row.Id, version, lawn, cancellation);
    }

    private OpenWalk Lay(StoredLawn stored, StepLeaf step, int index, bool isNew, UnitSystem system, string address)
    {
        var open = leaves.Lay(stored, step, index, isNew, system);
        var patch = stored.Lawn.Patches[index];
        if (step.Step == WalkStep.Arrive && patch.Survey?.Walked is null)
        {
            ArriveStep.Walked.Fill(open.Entries, Today(stored.Lawn));
        }

        return new(open, step, patch, address);
    }

    private DateOnly Today(Lawn lawn)
    {
        var now = clock.GetUtcNow();
        return DateOnly.FromDateTime(TimeZoneInfo.TryFindSystemTimeZoneById(LawnZone.Of(lawn).Zone, out var zone) ? TimeZoneInfo.ConvertTime(now, zone).DateTime : now.DateTime);
    }

    private static int? IndexOf(Lawn lawn, string patchId)
    {
        for (var i = 0; i < lawn.Patches.Count; i++)
        {
            if (lawn.Patches[i].Id == patchId)
            {
                return i;
            }
        }

        return null;
    }
}

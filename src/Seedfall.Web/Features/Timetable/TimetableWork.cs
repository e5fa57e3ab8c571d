using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Features.Timetable;

/// <summary>A lawn with its plan and the timetables of its phases.</summary>
/// <param name="Phases">Empty where there is no plan.</param>
public sealed record TimetabledLawn(PlannedLawn Planned, IReadOnlyList<PhaseTimetables> Phases);

/// <summary>Works out run-by-run timetables, one lawn at a time: the solver is heavy.</summary>
internal sealed class TimetableWork(PlanWork plans, WeatherShelf shelf) : IDisposable
{
    private readonly SemaphoreSlim _one = new(1, 1);

    public async Task<TimetabledLawn> Of(StoredLawn stored, CancellationToken cancellation)
    {
        var planned = await plans.Plan(stored, await plans.Kept(stored, null, cancellation), null, cancellation);
        if (planned.Plan is not { } plan || stored.Row.WeatherId is not { } weather || await shelf.History(weather, cancellation) is not { } history)
        {
            return new(planned, []);
        }

        await _one.WaitAsync(cancellation);
        try
        {
            return new(planned, await Task.Run(() => WaterPlanning.Timetables(plan.Water, stored.Lawn, plan.Patches, plan.Timing, history, planned.Asked), CancellationToken.None));
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();
}

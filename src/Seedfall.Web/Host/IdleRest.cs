namespace Seedfall.Web.Host;

/// <summary>
/// Gives memory back when nobody is there: planning a desk of lawns leaves a heap that a quiet process on the adviser's
/// machine has no use for. Collects once after half a minute without a request.
/// </summary>
internal sealed class IdleRest(TimeProvider clock) : BackgroundService
{
    private static readonly TimeSpan Quiet = TimeSpan.FromSeconds(30);
    private long _lastRequest = clock.GetTimestamp();
    private volatile bool _rested;

    /// <summary>Notes that somebody is there.</summary>
    public void Woken()
    {
        Volatile.Write(ref _lastRequest, clock.GetTimestamp());
        _rested = false;
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Quiet / 2.0, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            if (!_rested && clock.GetElapsedTime(Volatile.Read(ref _lastRequest)) >= Quiet)
            {
                _rested = true;
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            }
        }
    }
}

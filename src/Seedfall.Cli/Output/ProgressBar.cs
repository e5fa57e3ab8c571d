using System.Diagnostics;

namespace Seedfall.Cli.Output;

/// <summary>A one-line bar on a watched terminal, shown only once a step has taken longer than a second.</summary>
internal sealed class ProgressBar(Streams streams, string what) : IProgress<double>, IDisposable
{
    private const int Width = 24;

    private readonly Stopwatch _since = Stopwatch.StartNew();
    private readonly Lock _gate = new();
    private int _shown = -1;

    public void Report(double value)
    {
        lock (_gate)
        {
            var percent = (int)(100.0 * Math.Clamp(value, 0.0, 1.0));
            if (!streams.Interactive || percent == _shown || _since.ElapsedMilliseconds < 1000)
            {
                return;
            }

            _shown = percent;
            var filled = percent * Width / 100;
            streams.Remarks.Write($"\r{what} [{new string('#', filled)}{new string('.', Width - filled)}] {percent,3} %");
        }
    }

    public void Dispose()
    {
        if (_shown >= 0)
        {
            streams.Remarks.Write($"\r{new string(' ', what.Length + Width + 10)}\r");
        }
    }
}

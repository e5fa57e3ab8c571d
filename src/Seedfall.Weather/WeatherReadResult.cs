using System.Diagnostics.CodeAnalysis;
using Seedfall.Engine.Weather;

namespace Seedfall.Weather;

/// <summary>Either a history with its report, or the problems that kept anything from being read; never half of each.</summary>
public sealed record WeatherReadResult
{
    private WeatherReadResult()
    {
    }

    /// <summary>The days; null where the files were refused.</summary>
    public WeatherHistory? History { get; private init; }

    /// <summary>What was found in the files; null where they were refused.</summary>
    public WeatherReport? Report { get; private init; }

    /// <summary>Why the files were refused; empty where they were read.</summary>
    public IReadOnlyList<FileProblem> Problems { get; private init; } = [];

    /// <summary>True where the files were read.</summary>
    [MemberNotNullWhen(true, nameof(History), nameof(Report))]
    public bool IsRead => History is not null;

    internal static WeatherReadResult Read(WeatherHistory history, WeatherReport report) =>
        new() { History = history, Report = report };

    internal static WeatherReadResult Refused(IReadOnlyList<FileProblem> problems) => new() { Problems = problems };
}

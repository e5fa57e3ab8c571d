using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Field;

/// <summary>Measured cover beside the forecast.</summary>
public enum CoverStanding
{
    /// <summary>No picture since seed-down, or no seed-down day.</summary>
    NothingYet,

    /// <summary>The plan has no forecast for the day of the last picture.</summary>
    NoForecast,

    /// <summary>Above nine of ten past seasons.</summary>
    Ahead,

    /// <summary>Within what eight of ten past seasons span, as far as the pictures can tell.</summary>
    AsForecast,

    /// <summary>Below nine of ten past seasons, beyond the error of the pictures.</summary>
    Behind,
}

/// <summary>What the standing asks for.</summary>
public enum CoverAction
{
    /// <summary>Go on as planned.</summary>
    KeepOn,

    /// <summary>Take a picture.</summary>
    Look,

    /// <summary>Nothing that could be done now would help.</summary>
    Wait,

    /// <summary>Give the feeding the plan has.</summary>
    Feed,

    /// <summary>Reseed the thin spots while the window holds.</summary>
    Reseed,

    /// <summary>The window has closed: the other one is next.</summary>
    ReseedLater,
}

/// <summary>How the lawn comes on, and what to do.</summary>
/// <param name="Sentence">What to do, in one sentence.</param>
/// <param name="Reasons">Why, one sentence each.</param>
/// <param name="Figures">The numbers it rests on.</param>
public sealed record CoverProgress(CoverStanding Standing, CoverAction Action, string Sentence, IReadOnlyList<string> Reasons, IReadOnlyList<Figure> Figures)
{
    /// <summary>Readings a day, pooled over the pictures of that day.</summary>
    public IReadOnlyList<PooledCover> Readings { get; init; } = [];
}

using Seedfall.Engine.Units;

namespace Seedfall.Planning.Judgment.Survey;

/// <summary>
/// What was found on one walk over one patch. Everything may be missing: null or an empty list means not looked at. What was
/// looked for and not seen is said by <see cref="LookedFromAfar"/>, <see cref="LookedUpClose"/> and <see cref="LookedForWeeds"/>.
/// </summary>
public sealed record PatchSurvey
{
    /// <summary>The day it was walked.</summary>
    public DateOnly? Walked { get; init; }

    public Onset? Began { get; init; }

    public IReadOnlyList<WeatherBefore> WeatherBefore { get; init; } = [];

    /// <summary>What was put on in the weeks before it showed.</summary>
    public IReadOnlyList<PutOn> PutOn { get; init; } = [];

    /// <summary>Height of cut the patch is kept at.</summary>
    public Depth? Mown { get; init; }

    /// <summary>Hours of direct sun on a clear day in early autumn, counted or worked out.</summary>
    public double? SunHours { get; init; }

    /// <summary>Signs seen, from afar and up close.</summary>
    public IReadOnlyList<Sign> Signs { get; init; } = [];

    /// <summary>True when the patch was looked over from afar, whether or not a sign was seen.</summary>
    public bool LookedFromAfar { get; init; }

    /// <summary>True when blades, crowns and soil were looked at up close, whether or not a sign was seen.</summary>
    public bool LookedUpClose { get; init; }

    public IReadOnlyList<Quadrat> Quadrats { get; init; } = [];

    public TugTest? Tugs { get; init; }

    public GrubLifts? Lifts { get; init; }

    /// <summary>How deep a screwdriver went with one hand's push, spot by spot.</summary>
    public IReadOnlyList<Depth> Pushes { get; init; } = [];

    /// <summary>Thickness of the thatch, core by core.</summary>
    public IReadOnlyList<Depth> Thatch { get; init; } = [];

    /// <summary>Soil moisture by feel.</summary>
    public SoilFeel? Moisture { get; init; }

    /// <summary>Depth at which the soil was felt.</summary>
    public Depth? MoistureDepth { get; init; }

    /// <summary>True when a drop of water stood on a dry core for more than 5 seconds.</summary>
    public bool? DropStood { get; init; }

    public IReadOnlyList<WeedSeen> Weeds { get; init; } = [];

    /// <summary>True when weeds were looked for, whether or not any were found.</summary>
    public bool LookedForWeeds { get; init; }

    public string? Notes { get; init; }
}

/// <summary>One throw of the string grid or hoop, or one straight-down photograph in its place.</summary>
/// <param name="Points">Points of the grid looked at; null for a photograph.</param>
/// <param name="Living">Points that hit living turf.</param>
/// <param name="Weeds">Points that hit weeds; null where they were not told apart.</param>
/// <param name="Photo">Living cover measured on a photograph; null for a counted throw.</param>
public sealed record Quadrat(int? Points, int? Living, int? Weeds = null, Fraction? Photo = null)
{
    /// <summary>Share of living turf in this throw; null where the throw says nothing.</summary>
    internal double? Share => Photo is { } photo ? photo.Value : Points is > 0 and { } n && Living is { } k ? (double)k / n : null;
}

/// <summary>Brown tufts tugged, by what they did.</summary>
/// <param name="Held">Held fast; crowns firm and white.</param>
/// <param name="Lifted">Came up like a carpet, roots gone.</param>
/// <param name="PulledOut">Pulled out at the crown, dry or rotten.</param>
public sealed record TugTest(int Held, int Lifted, int PulledOut)
{
    public int Total => Held + Lifted + PulledOut;
}

/// <summary>Turf lifted and living white grubs counted.</summary>
/// <param name="Counts">Grubs under each lift.</param>
/// <param name="Ground">Ground of one lift.</param>
public sealed record GrubLifts(IReadOnlyList<int> Counts, Area Ground);

/// <summary>One kind of weed.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Cover">Share of the ground it covers; null where not judged.</param>
public sealed record WeedSeen(WeedKind Kind, Fraction? Cover);

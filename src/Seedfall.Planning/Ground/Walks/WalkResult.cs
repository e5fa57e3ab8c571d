using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Walks;

/// <summary>What a walk round the edge gave: an outline, or why it gives none.</summary>
public abstract record WalkResult
{
    private WalkResult()
    {
    }

    /// <summary>An outline with its area and the range the area lies in nine times in ten.</summary>
    /// <param name="Origin">Where the outline's zero point lies.</param>
    /// <param name="Outline">The outline, cleaned and thinned, of exactly the area stated.</param>
    /// <param name="Area">Area inside the walk.</param>
    /// <param name="Band">Half width of the 90 % range, as a share of the area; goes into <see cref="Measuring.AreaBand"/>.</param>
    /// <param name="Edge">Length of the outline.</param>
    /// <param name="Kept">Fixes used.</param>
    /// <param name="Remarks">What was dropped, cut, closed, thinned or assumed; never silent.</param>
    public sealed record Walked(
        GeoPoint Origin,
        PatchShape.Outline Outline,
        Area Area,
        Fraction Band,
        Length Edge,
        int Kept,
        IReadOnlyList<string> Remarks) : WalkResult
    {
        /// <summary>Lower end of the 90 % range.</summary>
        public Area Low => Area * (1.0 - Band.Value);

        /// <summary>Upper end of the 90 % range.</summary>
        public Area High => Area * (1.0 + Band.Value);

        /// <summary>What a patch drawn from this walk says of its measure.</summary>
        public Measuring Measured => new(MeasuredBy.PhoneWalk, Band);
    }

    /// <summary>No outline can be had from the walk.</summary>
    /// <param name="Fault">Why.</param>
    /// <param name="Found">What stands in the way, as a clause.</param>
    /// <param name="Expected">What to do instead, as a clause.</param>
    /// <param name="Origin">Where the zero point of <paramref name="Path"/> lies; null without any sound fix.</param>
    /// <param name="Path">The cleaned path as far as it goes, so that the page can show it.</param>
    /// <param name="Crossings">Where it crosses itself, on the same sheet.</param>
    public sealed record Refused(
        WalkFault Fault,
        string Found,
        string Expected,
        GeoPoint? Origin,
        IReadOnlyList<GroundPoint> Path,
        IReadOnlyList<RingCrossing> Crossings) : WalkResult;
}

/// <summary>Why a walk gives no outline.</summary>
public enum WalkFault
{
    /// <summary>Fewer sound fixes than an outline needs.</summary>
    TooFewFixes,

    /// <summary>The walk does not come back to its start.</summary>
    NotClosed,

    /// <summary>The fixes are too uncertain for a lawn of this size.</summary>
    TooPoor,

    /// <summary>The path crosses itself away from its ends.</summary>
    CrossesItself,

    /// <summary>The walk is too large or too small for a lawn.</summary>
    OutOfSize,
}

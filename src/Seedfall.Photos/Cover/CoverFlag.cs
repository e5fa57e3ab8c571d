namespace Seedfall.Photos.Cover;

/// <summary>What makes a measure doubtful.</summary>
public enum CoverFlag
{
    /// <summary>Much of the picture is near black: take it again in more light.</summary>
    TooDark,

    /// <summary>Much of the picture is blown out: take it again with the sun behind a cloud.</summary>
    BlownHighlights,

    /// <summary>Deep shadow beside full sun: shade the whole frame and take it again.</summary>
    StrongShadow,

    /// <summary>Nothing in the picture is sharp.</summary>
    Blurred,

    /// <summary>Something evenly blue-green, like dyed paper mulch, was left out: tap it to settle it.</summary>
    PaperMulch,

    /// <summary>The light colors everything: lay a gray card in the frame.</summary>
    ColorCast,

    /// <summary>The gray card is too dark or blown out to tell the light.</summary>
    CardUnreadable,

    /// <summary>Too few pixels to tell a blade from its surroundings.</summary>
    TooSmall,

    /// <summary>Green and ground run into each other: tap a few points to settle it.</summary>
    Unclear,
}

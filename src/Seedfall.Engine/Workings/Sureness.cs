namespace Seedfall.Engine.Workings;

/// <summary>How sure a figure is. Every <see cref="Working"/> says one of these.</summary>
public enum Sureness
{
    /// <summary>Measured on this lawn, or entered from a label, tag or test in hand.</summary>
    Measured,

    /// <summary>Follows from a published source named in the working.</summary>
    Published,

    /// <summary>Arithmetic on other figures; as sure as they are.</summary>
    Computed,

    /// <summary>Common practice in the trade, no source read: check the label or the handbook.</summary>
    CommonPractice,

    /// <summary>Assumed by Seedfall because nothing was entered or nothing could be read.</summary>
    Assumed,
}

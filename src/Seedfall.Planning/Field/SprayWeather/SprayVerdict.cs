namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Whether to spray now, by the weather. What is worse has the greater value.</summary>
public enum SprayVerdict
{
    /// <summary>Nothing in the weather stands against it.</summary>
    Go,

    /// <summary>Not forbidden, but a better hour comes or something is not known.</summary>
    Wait,

    /// <summary>Do not spray: the label, or drift that goes where it will.</summary>
    Stop,
}

/// <summary>One thing in the weather that speaks for care, for waiting or against spraying.</summary>
/// <param name="Id">Stable dotted id, one of <see cref="SprayTexts"/>.</param>
/// <param name="Weight">What it alone makes of the hour; <see cref="SprayVerdict.Go"/> is a caution that forbids nothing.</param>
/// <param name="Value">What was read, in the unit of the text's kind; null where nothing is measured.</param>
/// <param name="Limit">What it is held against.</param>
public sealed record SprayReason(string Id, SprayVerdict Weight, double? Value = null, double? Limit = null)
{
    /// <summary>The reason in one sentence, US units first.</summary>
    public string Statement => SprayTexts.Of(Id).Say(Value, Limit);

    /// <summary>What would change it.</summary>
    public string Instead => SprayTexts.Of(Id).Instead;
}

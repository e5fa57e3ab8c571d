namespace Seedfall.Planning.Materials;

/// <summary>Mowings of the new grass before a spray on seedlings.</summary>
/// <param name="Count">How many.</param>
/// <param name="Entered">True where the label in hand was entered as saying so.</param>
internal sealed record SeedlingMowings(int Count, bool Entered)
{
    /// <summary>What most broadleaf labels ask for (Purdue Extension; an older rule said three to four).</summary>
    internal const int Usual = 2;

    internal string Source => Entered ? "mowings: label, as entered" : "Purdue Extension: most broadleaf labels ask for two mowings";

    /// <summary>By the label where it was entered, else as usual.</summary>
    internal static SeedlingMowings Of(HerbicideLabel? label) => label?.MowingsBeforeSeedlings is { } entered ? new(entered, true) : new(Usual, false);
}

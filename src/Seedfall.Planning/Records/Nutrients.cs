namespace Seedfall.Planning.Records;

/// <summary>Nutrients as a record names them.</summary>
public static class Nutrients
{
    public const string Nitrogen = "nitrogen";

    public const string Phosphate = "phosphate";

    public const string Potash = "potash";

    /// <summary>True where a record's name means nitrogen, however it is written.</summary>
    public static bool IsNitrogen(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Trim().Equals(Nitrogen, StringComparison.OrdinalIgnoreCase) || name.Trim().Equals("N", StringComparison.Ordinal);
    }

    /// <summary>True for the nutrients a bag is graded by.</summary>
    public static bool Is(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return IsNitrogen(name) || name.Trim().Equals(Phosphate, StringComparison.OrdinalIgnoreCase) || name.Trim().Equals(Potash, StringComparison.OrdinalIgnoreCase);
    }
}

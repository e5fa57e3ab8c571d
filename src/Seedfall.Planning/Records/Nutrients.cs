using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

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

    /// <summary>True where a record's name means phosphate or phosphorus, however it is written.</summary>
    public static bool IsPhosphate(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Trim().Equals(Phosphate, StringComparison.OrdinalIgnoreCase) || name.Trim().Equals("P2O5", StringComparison.OrdinalIgnoreCase) || IsPhosphorus(name);
    }

    /// <summary>True for the nutrients a bag is graded by.</summary>
    public static bool Is(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return IsNitrogen(name) || IsPhosphate(name) || name.Trim().Equals(Potash, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Nitrogen an application brought.</summary>
    public static Mass NitrogenOf(Application what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Mass.FromKilograms(what.Actives.Where(active => IsNitrogen(active.Name)).Sum(active => active.Amount.Kilograms));
    }

    /// <summary>Phosphate (P2O5) an application brought; what was written as phosphorus is <c>P2O5 = P / 0.4364</c>.</summary>
    public static Mass PhosphateOf(Application what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return Mass.FromKilograms(what.Actives.Where(active => IsPhosphate(active.Name)).Sum(active =>
            IsPhosphorus(active.Name) ? active.Amount.Kilograms / FertilizerGrade.PhosphorusInPhosphate : active.Amount.Kilograms));
    }

    private static bool IsPhosphorus(string name) => name.Trim().Equals("phosphorus", StringComparison.OrdinalIgnoreCase) || name.Trim().Equals("P", StringComparison.Ordinal);
}

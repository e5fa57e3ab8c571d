namespace Seedfall.Planning.Materials;

/// <summary>Active ingredients the trade tables know something about.</summary>
internal static class Actives
{
    internal const string Mesotrione = "mesotrione";
    internal const string Siduron = "siduron";
    internal const string Quinclorac = "quinclorac";
    internal const string Dithiopyr = "dithiopyr";
    internal const string Pendimethalin = "pendimethalin";
    internal const string Prodiamine = "prodiamine";
    internal const string Halosulfuron = "halosulfuron";
    internal const string Glyphosate = "glyphosate";
    internal const string Triclopyr = "triclopyr";

    /// <summary>True when the entered name names this active ingredient, alone or in a mixture.</summary>
    internal static bool Is(string entered, string active) => entered.Contains(active, StringComparison.OrdinalIgnoreCase);

    /// <summary>True for the phenoxy and dicamba mixtures sold against broadleaf weeds.</summary>
    internal static bool IsBroadleafMixture(string entered) =>
        Is(entered, "2,4-D") || Is(entered, "mecoprop") || Is(entered, "MCPP") || Is(entered, "dicamba") || Is(entered, "MCPA");
}

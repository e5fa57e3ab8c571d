using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Judgment.Survey.Causes;

/// <summary>The usual cautions where a suspected cause leads to a spray.</summary>
public static class CauseCautions
{
    /// <summary>Identify before treating.</summary>
    public static Caution Identify { get; } = new("caution.identify", "Know it before treating it",
    [
        "A suggestion from a walk-over is no diagnosis. Confirm it by the test named, or by the state's plant clinic, before anything is sprayed or spread.",
        "Ask whether the turf outgrows it: most damage is past when it shows, and a treatment then does nothing but harm.",
        "Treat only with a product whose label names this lawn, this pest and this time of year, at its rate; keep to local code, and leave it to a licensed applicator where the law asks for one.",
        "Keep insecticides off flowers that bees visit: mow them off first.",
    ]);

    internal static IReadOnlyList<Caution> For(Treatment treatment) => treatment == Treatment.None ? [] : [Identify, Cautions.Label, Cautions.Spray];
}

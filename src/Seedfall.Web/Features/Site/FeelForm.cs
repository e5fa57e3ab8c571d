using Seedfall.Engine.Soil;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Site;

/// <summary>Texture by feel as a form, its answers in the address.</summary>
internal static class FeelForm
{
    private static readonly ChoiceField<bool> Ball = new("ball", "Does a handful hold together?", [(true, "yes", "It makes a ball"), (false, "no", "It falls apart")]) { Required = true, Blank = null, Hint = "Wet a tablespoon of soil drop by drop and knead it until it is like putty; squeeze it." };
    private static readonly ChoiceField<RibbonLength> Ribbon = new("ribbon", "How long a ribbon does it make?", [(RibbonLength.None, "none", "None"), (RibbonLength.Short, "short", "Under 1 in (2.5 cm)"), (RibbonLength.Medium, "medium", "1 to 2 in (2.5 to 5 cm)"), (RibbonLength.Long, "long", "Over 2 in (5 cm)")]) { Blank = null, Hint = "Push the ball out between thumb and finger into a flat ribbon; let it hang until it breaks of its own weight." };
    private static readonly ChoiceField<WetFeel> Feel = new("feel", "How does it feel made very wet?", [(WetFeel.Gritty, "gritty", "Mostly gritty"), (WetFeel.Smooth, "smooth", "Mostly smooth, like flour"), (WetFeel.Neither, "neither", "Neither stands out")]) { Blank = null, Hint = "Wet a pinch in the palm until it runs, and rub it." };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("Three questions", [Ball, Ribbon, Feel]) { Bare = true }];

    public static Entries From(IQueryCollection query, UnitSystem system)
    {
        var entries = new Entries(system);
        foreach (var name in (string[])[Ball.Name, Ribbon.Name, Feel.Name])
        {
            var text = query[name].ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        return entries;
    }

    /// <summary>The class; null where nothing was answered, or with a problem where an answer is missing.</summary>
    public static SoilTexture? Read(Entries entries)
    {
        if (entries.Text(Ball.Name).Length + entries.Text(Ribbon.Name).Length + entries.Text(Feel.Name).Length == 0)
        {
            return null;
        }

        var (ball, ribbon, feel) = (Ball.Read(entries), Ribbon.Read(entries), Feel.Read(entries));
        if (ball == true && ribbon is null)
        {
            entries.Wrong(Ribbon.Name, "Choose the length of the ribbon.");
        }

        if (ball == true && ribbon is not null and not RibbonLength.None && feel is null)
        {
            entries.Wrong(Feel.Name, "Choose how it feels.");
        }

        return entries.Sound && ball is { } holds ? FeelKey.ClassOf(holds, ribbon ?? RibbonLength.None, feel ?? WetFeel.Neither) : null;
    }
}

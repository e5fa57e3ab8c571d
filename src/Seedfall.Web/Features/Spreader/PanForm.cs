using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration.Spreader;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Spreader;

/// <summary>The pan test as a form, its answers in the address.</summary>
internal static class PanForm
{
    private static readonly TextField Catches = new("pans", "Catch of each pan, from your left to your right") { Longest = 600, Hint = "An odd number of pans with a space between, the middle one under the spreader: 0 1 2 3 4 3 2 1 0. Weight, or height in a narrow tube: any one unit." };
    private static readonly QuantityField<Length> Spacing = new("apart", "Distance between pans, middle to middle", UnitChoices.Distance, Length.Zero, Length.FromMeters(5.0)) { AboveLeast = true, Hint = "Blank takes 1 ft (30 cm)." };

    public static IReadOnlyList<FieldGroup> Groups { get; } = [new("The row", [Catches, Spacing])];

    public static Entries From(IQueryCollection query, UnitSystem system)
    {
        var entries = new Entries(system);
        foreach (var name in new[] { Catches.Name, Spacing.Name, Spacing.UnitName }.Where(query.ContainsKey))
        {
            var text = query[name].ToString();
            entries.Put(name, text.Length > 600 ? text[..600] : text);
        }

        return entries;
    }

    /// <summary>The test; null where nothing was entered or a problem was noted.</summary>
    public static PanTest? Read(Entries entries)
    {
        var spacing = Spacing.Read(entries) ?? Length.FromFeet(1.0);
        if (Catches.Read(entries) is not { } text)
        {
            return null;
        }

        List<double> catches = [];
        foreach (var word in text.Split([' ', ';', '\t'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!double.TryParse(word.TrimEnd(',').Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var catchOf))
            {
                entries.Wrong(Catches.Name, $"Catch of each pan: numbers with a space between are needed; “{word}” is none.");
                return null;
            }

            catches.Add(catchOf);
        }

        if (PanTest.Fault(catches) is { } fault)
        {
            entries.Wrong(Catches.Name, $"Catch of each pan: {fault}.");
        }

        return entries.Sound ? new PanTest(catches, spacing) : null;
    }
}

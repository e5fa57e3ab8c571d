using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.TakeOn;

/// <summary>Up to four bag sizes on offer, each with its price.</summary>
internal static class BagFields
{
    private const int Most = 4;

    private static readonly IReadOnlyList<(QuantityField<Mass> Size, NumberField Price)> Rows = [.. Enumerable.Range(1, Most).Select(Row)];

    public static FieldGroup Group { get; } = new("Bags on offer", [.. Rows.SelectMany(r => (Field[])[r.Size, r.Price])])
    {
        Hint = "The plan buys the cheapest set of bags that covers the need.",
        Folded = true,
    };

    public static void Fill(IReadOnlyList<BagOffer> bags, Entries entries)
    {
        for (var i = 0; i < Most; i++)
        {
            var bag = i < bags.Count ? bags[i] : null;
            Rows[i].Size.Fill(entries, bag?.Size);
            Rows[i].Price.FillMoney(entries, bag?.Price);
        }
    }

    public static IReadOnlyList<BagOffer> Read(Entries entries)
    {
        List<BagOffer> bags = [];
        foreach (var (size, price) in Rows)
        {
            var (mass, money) = (size.Read(entries), price.ReadMoney(entries));
            if (mass is { } kilograms)
            {
                bags.Add(new BagOffer(kilograms, money));
            }
            else if (money is not null)
            {
                entries.Wrong(size.Name, $"{size.Label}: a price was given without the size of the bag.");
            }
        }

        return bags;
    }

    private static (QuantityField<Mass> Size, NumberField Price) Row(int number)
    {
        var n = number.ToString(CultureInfo.InvariantCulture);
        return (
            new QuantityField<Mass>($"bag{n}", $"Bag {n}", UnitChoices.Mass, Mass.Zero, Mass.FromKilograms(1000.0)) { AboveLeast = true },
            new NumberField($"price{n}", $"Price of bag {n}", 0.0, 100_000.0));
    }
}

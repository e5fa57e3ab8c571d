using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>State of the ground, water used and saved, cost.</summary>
internal static class DailyFigures
{
    private const string Source = "hour-by-hour simulation of seedbed water: docs/science/watering.md; potentials held assumed";

    internal static Working Least(string note) => new(
        "least water over two days that keeps the zone wet, a later round counting less by the chance of rain before it", [], Source, Sureness.Assumed, note);

    internal static IReadOnlyList<Figure> Of(DailyScene scene, WaterKnown known, ThirstLearned thirst, BedRecord record, IReadOnlyList<DailyRound> rounds)
    {
        var id = $"water.daily.{scene.PatchId}";
        var down = scene.SeedDown.DayNumber - scene.Place.FirstDay.DayNumber;
        var areaM2 = scene.Sets.Sum(set => set.AreaM2);
        var givenMm = known.GivenMm.Skip(24 * down).Sum() + rounds.Sum(r => r.Depth.Value);
        var fixedMm = (known.Today - down + 1) * scene.Starts.Count * scene.FixedMm;
        var used = givenMm * areaM2;
        List<Figure> figures =
        [
            new($"{id}.suction", "Suction at the seed this morning, kPa", QuantityKind.Number, -1000.0 * record.Bed.ZoneMPa, new Working(
                "psi of the zone's layer from the water balance to the end of yesterday", [new("dry", "hours since seed-down drier than 500 kPa", record.DryHours, "h")], Source, Sureness.Computed)),
            new($"{id}.thirst", "How fast it dries beside what is computed", QuantityKind.Number, thirst.Factor, new Working(
                "mean of ln f given the finger tests, prior spread 0.25", [new("n", "finger tests", thirst.Tests, "")], "judged likelihoods: docs/science/watering.md", Sureness.Assumed)),
            new($"{id}.used", "Water used since seed-down, today's rounds included", QuantityKind.Volume, used, new Working(
                "V = d A", [new("d", "depth", new Depth(givenMm).Inches, "in"), new("A", "ground", new Area(areaM2).SquareFeet, "sq ft")], "1 in on 1,000 sq ft is 623.4 gal", Sureness.Computed)),
            new($"{id}.saved", "Water saved beside the fixed rounds", QuantityKind.Volume, (fixedMm - givenMm) * areaM2, new Working(
                "S = (n r f - d) A",
                [
                    new("n", "days, today included", known.Today - down + 1, "d"),
                    new("r", "fixed rounds a day", scene.Starts.Count, ""),
                    new("f", "depth of one", new Depth(scene.FixedMm).Inches, "in"),
                    new("d", "depth given", new Depth(givenMm).Inches, "in"),
                ],
                "arithmetic",
                Sureness.Computed,
                "Below nothing where more was given than the fixed rounds.")),
        ];
        if (scene.Meter is { } meter)
        {
            figures.Add(Metered($"{id}.cost", scene, meter, known, down, rounds.Sum(r => r.Depth.Value), areaM2));
        }
        else if (scene.PricePerThousandGallons is { } price)
        {
            var gallons = new Volume(used).Gallons;
            figures.Add(new Figure($"{id}.cost", "Cost of the water used", QuantityKind.Money, gallons / 1000.0 * (double)price, new Working(
                "C = V p / 1000", [new("V", "water used", gallons, "gal"), new("p", "price per 1,000 gallons", (double)price, "")], "price entered for this lawn", Sureness.Computed)));
        }

        return figures;
    }

    /// <summary>By the meter's steps, billing period by billing period from seed-down on.</summary>
    private static Figure Metered(string id, DailyScene scene, MeterPrice meter, WaterKnown known, int down, double todayMm, double areaM2)
    {
        var periods = new SortedDictionary<int, double>();
        for (var day = down; day <= known.Today; day++)
        {
            var givenMm = day < known.Today ? known.GivenMm.Skip(24 * day).Take(24).Sum() : todayMm;
            var period = (day - down) / MeteredCost.PeriodDays;
            periods[period] = periods.GetValueOrDefault(period) + (givenMm * areaM2);
        }

        return MeteredCost.Over(periods, meter, scene.HouseholdPerPeriod, new Figure(id, "Cost of the water used", QuantityKind.Money, 0.0, new Working(
            "",
            [],
            "price steps entered for this meter; periods of 30 days from seed-down assumed",
            Sureness.Computed,
            "This patch's water alone: beside other patches' it may reach a dearer step.")), "water used");
    }
}

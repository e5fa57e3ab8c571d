using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Sprayer;
using Seedfall.Planning.Ground;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>What a calibration form was read to say.</summary>
/// <param name="Found">Null before the form is filled or where something is wrong.</param>
/// <param name="Aim">What is put out against what is wanted; null where nothing is wanted.</param>
/// <param name="Remedies">What to change; empty where the rate is held.</param>
/// <param name="Course">Length of the ounce course; null where the spacing is not known.</param>
public sealed record SprayerAnswer(SprayerCalibration? Found, RateAim? Aim, IReadOnlyList<RateRemedy> Remedies, Figure? Course)
{
    /// <summary>Before anything is entered.</summary>
    public static SprayerAnswer Nothing { get; } = new(null, null, [], null);
}

/// <summary>A calibration as a form, its answers in the address.</summary>
internal static class SprayerForm
{
    private static readonly FieldGroup Aim = new("What should it put out?", [SprayerFields.Wanted]);

    private static readonly FieldGroup Nozzle = new("Nozzle and pressure", [SprayerFields.Pressure, SprayerFields.LeastPressure, SprayerFields.MostPressure]) { Folded = true, Hint = "Only where there is a gauge; then small trims can be reckoned." };

    private static readonly FieldGroup Wear = new("Nozzle and pressure", [SprayerFields.Rated, SprayerFields.RatedAt, SprayerFields.Pressure, SprayerFields.LeastPressure, SprayerFields.MostPressure]) { Folded = true, Hint = "The rating stands in the maker’s table. Without it nozzles are held against each other." };

    public static IReadOnlyList<FieldGroup> Groups(SprayerMethod method) => method.Key switch
    {
        "refill" => [new("What you did", [SprayerFields.Ground, .. SprayerFields.Used]), new("The watch", [SprayerFields.Width, .. Optional(SprayerFields.Times)]) { Folded = true, Hint = "For the walking speed. Leave it out if you took no times." }, Aim, Nozzle],
        "catch" => [new("The walk", [SprayerFields.Ground, .. SprayerFields.Times, SprayerFields.Width]), new("The bucket", [.. SprayerFields.Caught, SprayerFields.CatchTime]), Aim, Nozzle],
        _ => [new("The walk", [SprayerFields.Spacing, .. SprayerFields.Times]), new("The catch", [.. SprayerFields.Nozzles.Take(2)]), new("More nozzles", [.. SprayerFields.Nozzles.Skip(2)]) { Folded = true }, Aim, Wear],
    };

    /// <summary>The form as the address has it; before anything is asked, with what is usual and what the label asks.</summary>
    public static Entries From(IQueryCollection query, UnitSystem system, Lawn lawn)
    {
        var entries = new Entries(system);
        foreach (var (name, value) in query)
        {
            var text = value.ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        if (query.Count == 0)
        {
            SprayerFields.Ground.Fill(entries, system == UnitSystem.Metric ? Area.FromSquareMeters(100.0) : Area.FromThousandSquareFeet(1.0));
            SprayerFields.Wanted.Fill(entries, lawn.PreEmergent?.MinimumCarrier);
        }

        return entries;
    }

    /// <summary>What the answers say.</summary>
    public static SprayerAnswer Read(SprayerMethod method, Entries entries, Lawn lawn)
    {
        var course = method == SprayerMethod.Course ? Course(entries) : null;
        if (course is not null && OnlyCourse(entries))
        {
            return SprayerAnswer.Nothing with { Course = course };
        }

        var (test, rating, wanted) = (Test(method, entries), Rating(entries), SprayerFields.Wanted.Read(entries));
        var (least, most) = (SprayerFields.LeastPressure.Read(entries), SprayerFields.MostPressure.Read(entries));
        if (least is { } l && most is { } m && l > m)
        {
            entries.Wrong(SprayerFields.MostPressure.Name, $"{SprayerFields.MostPressure.Label}: a pressure above the lowest is needed.");
        }

        if (test is null || !entries.Sound)
        {
            return SprayerAnswer.Nothing with { Course = course };
        }

        var found = SprayerCalibration.Of(test, rating);
        var aim = (wanted ?? lawn.PreEmergent?.MinimumCarrier) is not { } target ? null : new RateAim(found.Rate, target)
        {
            Walk = found.Speed,
            Width = test is SprayerTest.OunceCourse o ? o.Spacing : test.Width,
            Pressure = test.Pressure,
            LeastPressure = least,
            MostPressure = most,
            LabelLeast = lawn.PreEmergent?.MinimumCarrier,
        };

        // Where nothing was asked for, more than the label's least is as good.
        var enough = wanted is null && aim is { Change: <= 1.0 };
        return new(found, aim, aim is null || enough ? [] : RateRemedies.For(aim), course);
    }

    private static SprayerTest? Test(SprayerMethod method, Entries entries)
    {
        var pressure = SprayerFields.Pressure.Read(entries);
        var times = (method == SprayerMethod.Refill ? Optional(SprayerFields.Times) : SprayerFields.Times).Select(t => t.Read(entries)).OfType<double>().ToList();
        switch (method.Key)
        {
            case "refill":
                var (ground, used, width) = (SprayerFields.Ground.Read(entries), Some(SprayerFields.Used, entries), SprayerFields.Width.Read(entries));
                return entries.Sound ? new SprayerTest.Refill(ground!.Value, used, times) { Width = width, Pressure = pressure } : null;
            case "catch":
                var (walked, caught, wide, lasted) = (SprayerFields.Ground.Read(entries), Some(SprayerFields.Caught, entries), SprayerFields.Width.Read(entries), SprayerFields.CatchTime.Read(entries));
                return entries.Sound ? new SprayerTest.Catch(walked!.Value, times, caught, lasted) { Width = wide, Pressure = pressure } : null;
            default:
                var (spacing, nozzles) = (SprayerFields.Spacing.Read(entries), Some(SprayerFields.Nozzles, entries));
                return entries.Sound ? new SprayerTest.OunceCourse(spacing!.Value, times, nozzles) { Pressure = pressure } : null;
        }
    }

    private static NozzleRating? Rating(Entries entries)
    {
        var (flow, at) = (SprayerFields.Rated.Read(entries), SprayerFields.RatedAt.Read(entries));
        if (flow is null != at is null && entries.Sound)
        {
            entries.Wrong(flow is null ? SprayerFields.Rated.Name : SprayerFields.RatedAt.Name, "Nozzle’s rating: flow and pressure are needed together, as the maker’s table has them.");
        }

        return flow is { } f && at is { } p ? new NozzleRating(f, p) : null;
    }

    /// <summary>The course for the spacing, where that much can be read.</summary>
    private static Figure? Course(Entries entries)
    {
        var alone = new Entries(entries.System);
        alone.Put(SprayerFields.Spacing.Name, entries.Text(SprayerFields.Spacing.Name));
        alone.Put(SprayerFields.Spacing.UnitName, entries.Text(SprayerFields.Spacing.UnitName));
        return SprayerFields.Spacing.Read(alone) is not { } spacing ? null : new Figure(
            "sprayer.course", "Course to mark", QuantityKind.Length, SprayerOutput.Course(spacing).Meters,
            new Working("L = 1/128 acre / spacing", [new("s", "spacing", spacing.Inches, "in"), new("A", "1/128 acre", SprayerOutput.OunceSquare.SquareFeet, "sq ft")], "1/128-acre method: Michigan State University and K-State Extension", Sureness.Published));
    }

    /// <summary>True where only the spacing was entered, to learn how long a course to mark.</summary>
    private static bool OnlyCourse(Entries entries) =>
        SprayerFields.Times.Concat<Field>(SprayerFields.Nozzles).All(f => entries.Text(f.Name).Length == 0);

    private static IReadOnlyList<Volume> Some(IReadOnlyList<QuantityField<Volume>> fields, Entries entries) => [.. fields.Select(f => f.Read(entries)).OfType<Volume>()];

    private static IReadOnlyList<NumberField> Optional(IReadOnlyList<NumberField> fields) => [.. fields.Select(f => f with { Required = false })];
}

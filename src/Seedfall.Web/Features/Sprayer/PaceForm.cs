using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Calibration;
using Seedfall.Planning.Calibration.Sprayer;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Sprayer;

/// <summary>A pace to walk.</summary>
/// <param name="Now">Speed of the timed walk; null where none was taken.</param>
/// <param name="Pace">Null where something is wrong.</param>
public sealed record PaceAnswer(Figure? Now, Pace? Pace)
{
    /// <summary>True where the pace can be walked evenly with a sprayer.</summary>
    public bool Walkable => Pace is { } pace && Planning.Calibration.Sprayer.Pace.IsWalkable(new Speed(pace.Speed.Value));
}

/// <summary>The walking pace as a form, its answers in the address.</summary>
internal static class PaceForm
{
    private static readonly Length UsualCourse = Length.FromFeet(100.0);
    private static readonly Speed UsualWalk = Speed.FromMilesPerHour(3.0);

    private static readonly QuantityField<Speed> Wanted = new("speed", "Speed to hold", UnitChoices.Speed, Speed.FromMetersPerSecond(0.2), Speed.FromMetersPerSecond(3.0)) { Hint = "From the calibration. Blank takes the speed of the walk below, or 3 mph." };
    private static readonly QuantityField<Length> Course = new("course", "Course", UnitChoices.Distance, Length.FromMeters(3.0), Length.FromMeters(300.0)) { Hint = "Blank takes 100 ft." };
    private static readonly NumberField Took = new("took", "It took", 2.0, 3600.0, "seconds");
    private static readonly NumberField Steps = new("steps", "Steps counted on it", 4.0, 1000.0, "steps") { Whole = true, Hint = "Blank takes 2 1/2 ft a step." };

    public static IReadOnlyList<FieldGroup> Groups { get; } =
    [
        new("The speed", [Wanted]),
        new("A walk over a measured course", [Course, Took, Steps]) { Hint = "With the sprayer on your back: full tanks shorten the step." },
    ];

    public static Entries From(IQueryCollection query, UnitSystem system)
    {
        var entries = new Entries(system);
        foreach (var (name, value) in query)
        {
            var text = value.ToString();
            entries.Put(name, text.Length > 40 ? text[..40] : text);
        }

        return entries;
    }

    public static PaceAnswer Read(Entries entries)
    {
        var (wanted, course, took, steps) = (Wanted.Read(entries), Course.Read(entries) ?? UsualCourse, Took.Read(entries), Steps.ReadWhole(entries));
        if (!entries.Sound)
        {
            return new(null, null);
        }

        var now = took is { } seconds ? WalkingPace.Over(course, seconds) : (Speed?)null;
        var step = steps is { } counted ? Pace.StepOf(course, counted) : Pace.UsualStep;
        if (step < Length.FromFeet(0.5) || step > Length.FromFeet(5.0))
        {
            entries.Wrong(Steps.Name, $"{Steps.Label}: with {NumberText.Write(steps!.Value)} steps on this course one would be {step.Feet:0.0} ft ({step.Meters:0.00} m); count again.");
            return new(null, null);
        }

        var figure = took is { } time ? Pace.Walked(course, time) : null;
        return new(figure, Pace.Of(wanted ?? now ?? UsualWalk, step, course));
    }
}

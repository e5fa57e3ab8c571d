using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>A walking speed as something that can be walked: steps per minute, and seconds over a course.</summary>
/// <param name="Speed">Speed to hold.</param>
/// <param name="StepsPerMinute">Beat of the steps for the walker's stride.</param>
/// <param name="Course">Course to walk it over.</param>
/// <param name="CourseSeconds">Seconds that takes.</param>
public sealed record Pace(Figure Speed, Figure StepsPerMinute, Figure Course, Figure CourseSeconds)
{
    /// <summary>A step from heel to heel where none was measured, common practice, no source read.</summary>
    public static Length UsualStep => Length.FromFeet(2.5);

    /// <summary>Slowest walk that is still steady with a sprayer, common practice, no source read.</summary>
    public static Speed Slowest => Engine.Units.Speed.FromMilesPerHour(2.0);

    /// <summary>Fastest walk that is still steady with a sprayer, common practice, no source read.</summary>
    public static Speed Fastest => Engine.Units.Speed.FromMilesPerHour(4.0);

    /// <summary>True where the speed can be walked evenly with a sprayer.</summary>
    public static bool IsWalkable(Speed speed) => speed >= Slowest && speed <= Fastest;

    /// <summary>Length of one step from a counted walk: <c>s = course / steps</c>.</summary>
    /// <param name="course">Course walked, above 0.</param>
    /// <param name="steps">Steps counted, at least 1.</param>
    public static Length StepOf(Length course, int steps) =>
        course > Length.Zero && steps > 0
            ? course / steps
            : throw new ArgumentOutOfRangeException(nameof(steps), steps, $"a course above 0 and at least one step are needed, the course was {course}");

    /// <summary>Speed of a timed walk as a figure: <c>mph = ft x 60 / (s x 88)</c>.</summary>
    /// <param name="course">Course walked.</param>
    /// <param name="seconds">Time it took, above 0 s.</param>
    public static Figure Walked(Length course, double seconds) => Worked.Sourced(
        "pace.now", "You walked", QuantityKind.Speed, WalkingPace.Over(course, seconds).MetersPerSecond, "mph = ft x 60 / (s x 88)", "extension calibration sheets", Sureness.Measured, null,
        new WorkingInput("ft", "course", course.Feet, "ft"), new WorkingInput("s", "time", seconds, "s"));

    /// <summary>The pace for a speed: <c>steps per minute = 60 v / s</c>, <c>seconds = L / v</c>.</summary>
    /// <param name="speed">Speed to hold, above 0.</param>
    /// <param name="step">Length of one step, above 0.</param>
    /// <param name="course">Course walked, above 0.</param>
    public static Pace Of(Speed speed, Length step, Length course)
    {
        if (!(speed > Engine.Units.Speed.Zero) || !(step > Length.Zero) || !(course > Length.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(speed), speed, $"a speed, a step and a course above 0 are needed, the step was {step}, the course {course}");
        }

        return new(
            Worked.Computed("pace.speed", "Walk", QuantityKind.Speed, speed.MetersPerSecond, "as chosen"),
            Worked.Computed(
                "pace.steps", "Steps in a minute", QuantityKind.Count, 60.0 * speed.MetersPerSecond / step.Meters, "steps = 60 v / s", null,
                new WorkingInput("v", "walk", speed.MetersPerSecond / 0.3048, "ft per s"), new WorkingInput("s", "one step", step.Feet, "ft")),
            Worked.Computed("pace.course", "Course", QuantityKind.Length, course.Meters, "as measured"),
            Worked.Computed(
                "pace.seconds", "Seconds over the course", QuantityKind.Seconds, course.Meters / speed.MetersPerSecond, "t = L / v", null,
                new WorkingInput("L", "course", course.Feet, "ft"), new WorkingInput("v", "walk", speed.MetersPerSecond / 0.3048, "ft per s")));
    }
}

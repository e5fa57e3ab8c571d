namespace Seedfall.Planning.Judgment.Survey;

/// <summary>The steps of the walk and which of them were taken.</summary>
public static class WalkSteps
{
    /// <summary>All steps in the order one walks.</summary>
    public static IReadOnlyList<WalkStep> Order { get; } = Enum.GetValues<WalkStep>();

    /// <summary>True where the step left something behind. A grub count that is not clear of the line still wants more lifts.</summary>
    public static bool Taken(WalkStep step, PatchSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return step switch
        {
            WalkStep.Arrive => survey.Began is not null || survey.WeatherBefore.Count > 0 || survey.PutOn.Count > 0 || survey.Mown is not null || survey.SunHours is not null,
            WalkStep.FromAfar => survey.LookedFromAfar,
            WalkStep.Quadrats => survey.Quadrats.Count > 0,
            WalkStep.Tug => survey.Tugs is { Total: > 0 },
            WalkStep.Lift => GrubEstimate.Of(survey.Lifts) is { } grubs && (grubs.Standing != GrubStanding.NeedsMore || grubs.More is null),
            WalkStep.Push => survey.Pushes.Count > 0,
            WalkStep.Thatch => survey.Thatch.Count > 0,
            WalkStep.Moisture => survey.Moisture is not null || survey.DropStood is not null,
            WalkStep.UpClose => survey.LookedUpClose,
            WalkStep.Weeds => survey.LookedForWeeds || survey.Weeds.Count > 0,
            _ => throw new ArgumentOutOfRangeException(nameof(step), step, "is not a step of the walk"),
        };
    }
}

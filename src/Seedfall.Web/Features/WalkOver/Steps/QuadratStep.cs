using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>One throw of the grid; each is saved by itself.</summary>
/// <param name="number">Which throw, from 0; past the last for a new one.</param>
internal sealed class QuadratStep(int number) : StepLeaf(WalkStep.Quadrats, "quadrats", "Count the living cover", "Throw the grid without looking. At each crossing of the strings: does it touch living turf? Ten throws tell well.")
{
    /// <summary>Points of a grid where none was counted before: five strings each way.</summary>
    private const int UsualPoints = 25;

    private static readonly NumberField Points = new("points", "Points on the grid", 1.0, 400.0) { Whole = true, Hint = "Crossings of the strings, or marks on the hoop." };
    private static readonly NumberField Living = new("living", "Points on living turf", 0.0, 400.0) { Whole = true };
    private static readonly NumberField Weeds = new("weeds", "Points on weeds", 0.0, 400.0) { Whole = true, Hint = "Leave blank where you do not tell them apart." };
    private static readonly NumberField Photo = new("photo", "Living cover on a photograph", 0.0, 100.0, "%") { Hint = "In place of counting: the cover measured on one picture taken straight down." };

    public int Number { get; } = number;

    public override string Gist(PatchSurvey survey, UnitSystem system) => CoverEstimate.Living(survey.Quadrats) is { } cover
        ? $"{WalkText.Percent(cover.Share)} alive ({WalkText.Percent(cover.Low)} to {WalkText.Percent(cover.High)}) from {cover.Throws} {(cover.Throws == 1 ? "throw" : "throws")}"
        : "";

    /// <summary>One throw in words.</summary>
    public static string Line(Quadrat quadrat) => quadrat.Photo is { } photo
        ? $"photograph, {WalkText.Percent(photo.Value)} alive"
        : $"{quadrat.Living} of {quadrat.Points} points alive{(quadrat.Weeds is { } weeds ? $", weeds on {weeds}" : "")}";

    /// <summary>Puts a cover measured on a photograph in place of a count.</summary>
    public static void FromPhoto(Entries entries, double percent)
    {
        entries.Put(Points.Name, null);
        entries.Put(Photo.Name, NumberText.Write(Math.Round(percent, 1)));
    }

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) =>
    [
        new("Count", [Points, Living, Weeds]) { Bare = true },
        new("Or measure a photograph", [Photo]) { Folded = true },
    ];

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        var quadrat = Number < survey.Quadrats.Count ? survey.Quadrats[Number] : null;
        Points.Fill(entries, quadrat is null ? survey.Quadrats.LastOrDefault(q => q.Points is not null)?.Points ?? UsualPoints : quadrat.Points);
        Living.Fill(entries, quadrat?.Living);
        Weeds.Fill(entries, quadrat?.Weeds);
        Photo.FillShare(entries, quadrat?.Photo);
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries)
    {
        var (points, living, weeds, photo) = (Points.ReadWhole(entries), Living.ReadWhole(entries), Weeds.ReadWhole(entries), Photo.ReadShare(entries));
        if (photo is not null && living is not null)
        {
            entries.Wrong(Photo.Name, $"{Photo.Label}: either points or a photograph, not both. Blank one of them.");
        }
        else if (photo is null && living is null)
        {
            entries.Wrong(Living.Name, $"{Living.Label}: a count is needed, or the cover of a photograph; skip this step to leave it out.");
        }
        else if (photo is null && points is null)
        {
            entries.Wrong(Points.Name, $"{Points.Label}: how many points were looked at is needed beside the {living} hits.");
        }
        else if (photo is null && living > points)
        {
            entries.Wrong(Living.Name, $"{Living.Label}: {living} hits of {points} points cannot be.");
        }
        else if (photo is null && living + weeds > points)
        {
            entries.Wrong(Weeds.Name, $"{Weeds.Label}: {living} living and {weeds} weeds make more than {points} points.");
        }

        var quadrat = photo is null ? new Quadrat(points, living, weeds) : new Quadrat(null, null, null, photo);
        return before with { Quadrats = Number < before.Quadrats.Count ? [.. before.Quadrats.Select((q, i) => i == Number ? quadrat : q)] : [.. before.Quadrats, quadrat] };
    }

    /// <summary>Without this throw.</summary>
    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Quadrats = [.. survey.Quadrats.Where((_, i) => i != Number)] };
}

using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>Weeds by kind and cover.</summary>
internal sealed class WeedStep() : StepLeaf(WalkStep.Weeds, "weeds", "Name the weeds", "Weeds tell of the ground they live on, and each kind is dealt with in its own way.")
{
    private static readonly TicksField<WeedKind> Kinds = new("kinds", "Which grow here?", SurveyWords.WeedKinds) { Hint = "Saving with nothing ticked says: looked, and found none." };
    private static readonly TextField Notes = new("notes", "Anything else worth knowing") { Longest = 500 };

    private static readonly IReadOnlyList<(WeedKind Kind, NumberField Cover)> Covers =
        [.. SurveyWords.WeedKinds.Select(w => (w.Item1, new NumberField("cover-" + w.Item2, w.Item3, 0.0, 100.0, "% of the ground")))];

    public override string Blank => "Looked, no weeds found";

    public override string Gist(PatchSurvey survey, UnitSystem system) => survey.Weeds.Count > 0
        ? string.Join("; ", survey.Weeds.Select(w => SurveyWords.WeedKinds.Words(w.Kind) + (w.Cover is { } c ? $" {WalkText.Percent(c.Value)}" : "")))
        : survey.LookedForWeeds ? Blank : "";

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) =>
    [
        new("Weeds", [Kinds]) { Bare = true },
        new("How much of each, where you can judge it", [.. Covers.Select(c => c.Cover)]) { Folded = true },
        new("Notes", [Notes]) { Bare = true },
    ];

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        Kinds.Fill(entries, survey.Weeds.Select(w => w.Kind));
        foreach (var (kind, cover) in Covers)
        {
            cover.FillShare(entries, survey.Weeds.FirstOrDefault(w => w.Kind == kind)?.Cover);
        }

        Notes.Fill(entries, survey.Notes);
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries)
    {
        var ticked = Kinds.Read(entries, [.. before.Weeds.Select(w => w.Kind)]);
        var covers = Covers.ToDictionary(c => c.Kind, c => c.Cover.ReadShare(entries));
        var sum = covers.Values.Sum(c => c?.Percent ?? 0.0);
        if (sum > 100.0 + 1e-9)
        {
            entries.Wrong(Covers.First(c => covers[c.Kind] is not null).Cover.Name, $"The weeds together cover {NumberText.Write(sum)} %: no more than 100 % of the ground can be.");
        }

        IEnumerable<WeedKind> judged = Covers.Select(c => c.Kind).Where(k => covers[k] is not null && !ticked.Contains(k));
        return before with { Weeds = [.. ticked.Concat(judged).Select(k => new WeedSeen(k, covers[k]))], LookedForWeeds = true, Notes = Notes.Read(entries) };
    }

    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Weeds = [], LookedForWeeds = false };
}

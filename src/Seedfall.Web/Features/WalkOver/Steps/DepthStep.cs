using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>Several depths, spot by spot: the screwdriver, or the thatch.</summary>
internal sealed class DepthStep : StepLeaf
{
    private const int Open = 4;
    private const int Usual = 10;
    private const int Most = 40;

    private readonly IReadOnlyList<QuantityField<Depth>> _spots;
    private readonly Func<PatchSurvey, IReadOnlyList<Depth>> _get;
    private readonly Func<PatchSurvey, IReadOnlyList<Depth>, PatchSurvey> _set;
    private readonly string _each;

    private DepthStep(
        WalkStep step, string id, string title, string why, string each, double mostMm, Func<PatchSurvey, IReadOnlyList<Depth>> get, Func<PatchSurvey, IReadOnlyList<Depth>, PatchSurvey> set)
        : base(step, id, title, why)
    {
        (_each, _get, _set) = (each, get, set);
        _spots = [.. Enumerable.Range(1, Most).Select(i => i.ToString(CultureInfo.InvariantCulture)).Select(i =>
            new QuantityField<Depth>($"depth{i}", $"{each} {i}", UnitChoices.Depth, Depth.Zero, Depth.FromMillimeters(mostMm)))];
    }

    public static DepthStep Push() => new(
        WalkStep.Push, "push", "Push a screwdriver", "Push a 6 in (15 cm) screwdriver straight down with one hand, in several spots, and measure how far it goes. In dry soil it tells little: feel the soil too.",
        "Spot", 609.6, s => s.Pushes, (s, depths) => s with { Pushes = depths });

    public static DepthStep Thatch() => new(
        WalkStep.Thatch, "thatch", "Measure the thatch", "Cut a plug and measure the brown, springy layer between the green and the soil, without squeezing it. Several plugs.",
        "Plug", 152.4, s => s.Thatch, (s, depths) => s with { Thatch = depths });

    public override string Gist(PatchSurvey survey, UnitSystem system) => SurveyedPatch.MeanDepth(_get(survey)) is { } mean
        ? $"{WalkText.Depth(mean, system)} on average, {_get(survey).Count} {(_get(survey).Count == 1 ? _each : _each + "s").ToLowerInvariant()}"
        : "";

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn)
    {
        var filled = lawn.Patches.Max(p => p.Survey is { } survey ? _get(survey).Count : 0);
        return
        [
            new("Depths", [.. _spots.Take(Open)]) { Bare = true },
            new($"More {_each.ToLowerInvariant()}s", [.. _spots.Skip(Open).Take(Math.Max(Usual, filled) - Open)]) { Folded = true },
        ];
    }

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        var depths = _get(survey);
        for (var i = 0; i < Most; i++)
        {
            _spots[i].Fill(entries, i < depths.Count ? depths[i] : null);
        }
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries) => _set(before, [.. _spots.Select(s => s.Read(entries)).OfType<Depth>()]);

    protected override PatchSurvey Clear(PatchSurvey survey) => _set(survey, []);
}

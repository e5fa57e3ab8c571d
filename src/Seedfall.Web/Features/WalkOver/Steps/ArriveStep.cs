using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.WalkOver.Steps;

/// <summary>What the owner tells before the first look.</summary>
internal sealed class ArriveStep() : StepLeaf(WalkStep.Arrive, "arrive", "Arrive and ask", "Ask the owner before you look: when it began, what the weather was, what was put on.")
{
    public static readonly DateField Walked = new("walked", "Day of this walk");
    private static readonly ChoiceField<Onset> Began = new("began", "How did it begin?", SurveyWords.Onsets);
    private static readonly TicksField<WeatherBefore> Weather = new("weather", "Weather in the weeks before", SurveyWords.Weathers);
    private static readonly TicksField<PutOn> PutOns = new("puton", "Put on before it showed", SurveyWords.PutOns);
    private static readonly QuantityField<Depth> Mown = new("mown", "Mown at", UnitChoices.Depth, Depth.FromMillimeters(2.54), Depth.FromMillimeters(304.8)) { Hint = "Height of cut." };
    private static readonly NumberField Sun = new("sun", "Direct sun on a clear day in early autumn", 0.0, 16.0, "hours");

    public override string Gist(PatchSurvey survey, UnitSystem system)
    {
        IEnumerable<string?> parts =
        [
            survey.Began is { } began ? SurveyWords.Onsets.Words(began) : null,
            .. survey.WeatherBefore.Select(w => SurveyWords.Weathers.Words(w)),
            .. survey.PutOn.Select(p => SurveyWords.PutOns.Words(p)),
            survey.Mown is { } cut ? $"mown at {WalkText.Depth(cut, system)}" : null,
            survey.SunHours is { } sun ? $"{NumberText.Write(sun)} h of sun" : null,
        ];
        return string.Join("; ", parts.OfType<string>());
    }

    protected override IReadOnlyList<FieldGroup> Groups(Lawn lawn) => [new("Before the first look", [Walked, Began, Weather, PutOns, Mown, Sun]) { Bare = true }];

    protected override void Fill(PatchSurvey survey, Entries entries)
    {
        Walked.Fill(entries, survey.Walked);
        Began.Fill(entries, survey.Began);
        Weather.Fill(entries, survey.WeatherBefore);
        PutOns.Fill(entries, survey.PutOn);
        Mown.Fill(entries, survey.Mown);
        Sun.Fill(entries, survey.SunHours);
    }

    protected override PatchSurvey Read(PatchSurvey before, Entries entries) => before with
    {
        Walked = Walked.Read(entries),
        Began = Began.Read(entries),
        WeatherBefore = Weather.Read(entries, before.WeatherBefore),
        PutOn = PutOns.Read(entries, before.PutOn),
        Mown = Mown.Read(entries),
        SunHours = Sun.Read(entries),
    };

    protected override PatchSurvey Clear(PatchSurvey survey) => survey with { Began = null, WeatherBefore = [], PutOn = [], Mown = null, SunHours = null };
}

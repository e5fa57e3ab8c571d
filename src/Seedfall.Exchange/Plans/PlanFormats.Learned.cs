using Seedfall.Engine.Workings;
using Seedfall.Exchange.Json;
using Seedfall.Planning.Timing;

namespace Seedfall.Exchange.Plans;

/// <summary>What the field log taught, and cover patch by patch.</summary>
internal sealed partial class PlanFormats
{
    private static RecordFormat<PatchCover> PatchCoverFormat()
    {
        var f = new RecordFormat<PatchCover>("patchCoverForecast");
        var patch = f.Required("patch", Scalars.Words, x => x.PatchId, "");
        var days = f.Required("days", new ListFormat<CoverFanDay>(CoverFormat()), x => x.Days, "");
        return f.Made(v => new PatchCover(v.Get(patch), v.Get(days)));
    }

    private RecordFormat<SeasonLearning> LearningFormat()
    {
        var f = new RecordFormat<SeasonLearning>("learned");
        var readings = f.Required("readings", new ListFormat<ReadingLearned>(ReadingFormat()), x => x.Readings, "Thermometer readings beside the computed soil at their hour and depth, degC.");
        var greens = f.Required("greens", new ListFormat<GreenLearned>(GreenFormat()), x => x.Greens, "First greens beside the computed day.");
        var covers = f.Required("covers", new ListFormat<CoverLearned>(SeenFormat()), x => x.Covers, "Covers seen beside the forecast, 0 to 1.");
        var figures = f.Required("figures", new ListFormat<Figure>(Figure), x => x.Figures, "");
        var leftOut = f.Required("leftOut", new ListFormat<string>(Scalars.Words), x => x.LeftOut, "Entries that could not be used, each with the reason.");
        return f.Made(v => new SeasonLearning(v.Get(readings), v.Get(greens), v.Get(covers), v.Get(figures), v.Get(leftOut)));
    }

    private static RecordFormat<ReadingLearned> ReadingFormat()
    {
        var f = new RecordFormat<ReadingLearned>("readingLearned");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var read = f.Required("readC", Scalars.Number, x => x.ReadC, "");
        var computed = f.Required("computedC", Scalars.Number, x => x.ComputedC, "From weather alone.");
        var expected = f.Required("expectedC", Scalars.Number, x => x.ExpectedC, "With what earlier readings taught.");
        var used = f.Required("used", Scalars.Truth, x => x.Used, "False where it lay too far off to be believed.");
        return f.Made(v => new ReadingLearned(v.Get(date), v.Get(read), v.Get(computed), v.Get(expected), v.Get(used)));
    }

    private static RecordFormat<GreenLearned> GreenFormat()
    {
        var f = new RecordFormat<GreenLearned>("greenLearned");
        var patch = f.Required("patch", Scalars.Words, x => x.PatchId, "");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var computed = f.Optional("computed", Scalars.Date, x => x.Computed, "Absent where none was to be expected.");
        var corrected = f.Optional("corrected", Scalars.Date, x => x.Corrected, "With the pace learned.");
        return f.Made(v => new GreenLearned(v.Get(patch), v.Get(date), v.Get(computed), v.Get(corrected)));
    }

    private static RecordFormat<CoverLearned> SeenFormat()
    {
        var f = new RecordFormat<CoverLearned>("coverLearned");
        var patch = f.Required("patch", Scalars.Words, x => x.PatchId, "");
        var date = f.Required("date", Scalars.Date, x => x.Date, "");
        var seen = f.Required("seen", Scalars.Number, x => x.Seen, "");
        var computed = f.Required("computed", Scalars.Number, x => x.Computed, "From weather and seed alone.");
        var expected = f.Required("expected", Scalars.Number, x => x.Expected, "With what was seen before.");
        return f.Made(v => new CoverLearned(v.Get(patch), v.Get(date), v.Get(seen), v.Get(computed), v.Get(expected)));
    }
}

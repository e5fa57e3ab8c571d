using Seedfall.Exchange.Catalog;
using Seedfall.Web.Features.Coverage;
using Seedfall.Web.Features.DaySheet;
using Seedfall.Web.Features.Drawing;
using Seedfall.Web.Features.Lawns;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Photos;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.Records;
using Seedfall.Web.Features.Site;
using Seedfall.Web.Features.Sprayer;
using Seedfall.Web.Features.SprayWindow;
using Seedfall.Web.Features.Spreader;
using Seedfall.Web.Features.TakeAway;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Timetable;
using Seedfall.Web.Features.WalkOver;
using Seedfall.Web.Features.Water;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Host;

/// <summary>The trade's tables and what works with them.</summary>
internal static class FeatureSetup
{
    public static void AddFeatures(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton(_ => Trade.Tables);
        builder.Services.AddSingleton<LawnBook>();
        builder.Services.AddSingleton<LeafWork>();
        builder.Services.AddSingleton<WalkWork>();
        builder.Services.AddSingleton<SheetShelf>();
        builder.Services.AddSingleton<DrawWork>();
        builder.Services.AddSingleton<WeatherShelf>();
        builder.Services.AddSingleton<LogBook>();
        builder.Services.AddSingleton<RecordWork>();
        builder.Services.AddSingleton<PlanWork>();
        builder.Services.AddSingleton<TimetableWork>();
        builder.Services.AddSingleton<WaterWork>();
        builder.Services.AddSingleton<ForecastShelf>();
        builder.Services.AddSingleton<SprayWork>();
        builder.Services.AddSingleton<PlacesWork>();
        builder.Services.AddSingleton<TankWork>();
        builder.Services.AddSingleton<SpreaderShelf>();
        builder.Services.AddSingleton<SpreadWork>();
        builder.Services.AddSingleton<SiteWork>();
        builder.Services.AddHttpClient<SoilSurvey>().ConfigurePrimaryHttpMessageHandler(SoilSurvey.Wire).RemoveAllLoggers();
        builder.Services.AddSingleton<PhotoFolder>();
        builder.Services.AddSingleton<PhotoShelf>();
        builder.Services.AddSingleton<PhotoMeasuring>();
        builder.Services.AddSingleton<PhotoLogging>();
        builder.Services.AddSingleton<PhotoTaking>();
        builder.Services.AddSingleton<OnePhotoScene>();
        builder.Services.AddSingleton<Desk>();
        builder.Services.AddSingleton<DemoLoading>();
        builder.Services.AddSingleton<PaperPrinting>();
        builder.Services.AddSingleton<Taking>();
        builder.Services.AddSingleton<DayWork>();
        builder.Services.AddSingleton<PhoneFiles>();
        builder.Services.AddSingleton<EntryArrivals>();
    }
}

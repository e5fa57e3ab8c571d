using Seedfall.Web.Features.Lawns;
using Seedfall.Web.Features.Log;
using Seedfall.Web.Features.Photos;
using Seedfall.Web.Features.Plan;
using Seedfall.Web.Features.TakeAway;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;
using Seedfall.Web.Host;

var builder = WebApplication.CreateBuilder(args);
builder.AddSettings(args);
builder.AddPages();
builder.AddStore();
builder.AddFeatures();

var app = builder.Build();
app.UseOneLineFailures();
app.UseSecurityHeaders();
app.UseCompressedFiles();
app.UsePages();
app.MapLawns();
app.MapTakeOn();
app.MapWeather();
app.MapPlan();
app.MapLog();
app.MapPhotos();
app.MapTakeAway();
return app.OpenAndRun();

using System.Text;
using Seedfall.Exchange.Demo;
using Seedfall.Weather;
using Seedfall.Web.Features.TakeOn;
using Seedfall.Web.Features.Weather;

namespace Seedfall.Web.Features.Lawns;

/// <summary>Puts the invented demo on a desk that was never used, and marks it invented.</summary>
internal sealed class DemoLoading(LawnBook book, WeatherShelf shelf)
{
    public async Task Load(CancellationToken cancellation)
    {
        using var csv = new StringWriter();
        WeatherCsv.Write(DemoTown.Weather, csv);
        var bytes = Encoding.UTF8.GetBytes(csv.ToString());
        var read = WeatherFiles.Read([new WeatherInput(DemoTown.WeatherFileName, bytes.Length, () => new MemoryStream(bytes, writable: false))], cancellation: cancellation);
        if (!read.IsRead)
        {
            throw new InvalidDataException($"the demo's weather cannot be read: {string.Join("; ", read.Problems)}");
        }

        var weather = await shelf.Add("Tansy Ford", read.History, read.Report, invented: true, cancellation);
        foreach (var lawn in DemoTown.Lawns)
        {
            await book.Add(lawn, weather, invented: true, cancellation);
        }
    }
}

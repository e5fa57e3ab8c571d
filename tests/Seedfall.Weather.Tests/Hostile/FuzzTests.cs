using System.Text;
using CsCheck;
using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests.Hostile;

/// <summary>Good files with bytes changed, taken out, put in and cut off: whatever comes, an answer and no exception.</summary>
public sealed class FuzzTests
{
    private static readonly byte[][] Seeds =
    [
        .. new[]
        {
            Lines(Samples.UscrnDailyLine, Samples.UscrnDay("20260902", 20, 10, 1), Samples.UscrnEmptyDay("20260903"), Samples.UscrnDay("20260904", 22, 10, 0)),
            Lines([.. Samples.UscrnHoursOf(new(2026, 9, 1), h => 10 + h, _ => 0, h => h * 20)]),
            Lines(Samples.GhcnRainLine, Samples.GhcnRainLine.Replace("PRCP", "TMAX", StringComparison.Ordinal)),
            Samples.GhcnAccess,
            Samples.PowerDaily,
            "# station: Invented Hill\n# latitude_deg: 42.3\ndate,tmax_c,tmin_c,rain_mm,quality\n2023-09-05,24.6,11.2,3.4,\n2023-09-06,24.6,\"11.2\",T,filled\n",
            "date;temp_max;temp_min;precipitation\n1/14/2012;12,8;5,0;0,0\n1/15/2012;10,6;2,8;10,9\n",
            "USC00990001,20260901,TMAX,246,,,7,0700\nUSC00990001,20260901,TMIN,112,,,7,0700\nUSC00990001,20260901,PRCP,53,,,7,0700\n",
        }.Select(Encoding.UTF8.GetBytes),
        Gzip(Encoding.UTF8.GetBytes(Samples.GhcnAccess)),
    ];

    private static readonly Gen<(int Kind, int At, byte Byte)> Change =
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 1 << 20], Gen.OneOf(Gen.Byte, Gen.OneOfConst("0123456789,.-\n\" {}[]:TM"u8.ToArray())));

    [Fact]
    public void Changed_files_never_throw()
    {
        Gen.Select(Gen.Int[0, Seeds.Length - 1], Change.Array[1, 12]).Sample(
            (seed, changes) =>
            {
                var bytes = Seeds[seed].ToList();
                foreach (var change in changes)
                {
                    Apply(bytes, change);
                }

                var result = Read(Bytes([.. bytes]));
                return result.IsRead
                    ? result.Problems.Count == 0 && WeatherReportText.Lines(result.Report).Count > 5 && result.History.Days.Count > 0 && result.History.Days.All(d => d.TminC <= d.TmaxC && d.RainMm >= 0 && double.IsFinite(d.TmaxC))
                    : result.Problems.Count > 0 && result.Report is null && result.Problems.All(p => p.ToString().Length < 2_000);
            },
            iter: 4_000);
    }

    [Fact]
    public void Every_cut_of_every_format_gives_an_answer()
    {
        foreach (var seed in Seeds)
        {
            for (var length = 0; length < seed.Length; length++)
            {
                var result = Read(Bytes(seed[..length]));
                Assert.NotEqual(result.IsRead, result.Problems.Count > 0);
            }
        }
    }

    [Fact]
    public void Noise_never_throws() =>
        Gen.Byte.Array[0, 600].Sample(bytes => Read(Bytes(bytes)).Problems.Count > 0, iter: 1_000);

    private static void Apply(List<byte> bytes, (int Kind, int At, byte Byte) change)
    {
        if (bytes.Count == 0)
        {
            return;
        }

        var at = change.At % bytes.Count;
        switch (change.Kind)
        {
            case 0:
                bytes[at] = change.Byte;
                break;
            case 1:
                bytes.RemoveAt(at);
                break;
            case 2:
                bytes.Insert(at, change.Byte);
                break;
            case 3:
                bytes.RemoveRange(at, Math.Min(change.Byte, bytes.Count - at));
                break;
            default:
                bytes.InsertRange(at, bytes.GetRange(0, Math.Min(at, 80)));
                break;
        }
    }
}

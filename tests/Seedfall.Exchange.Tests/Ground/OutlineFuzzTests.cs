using CsCheck;
using Seedfall.Exchange.Ground;

namespace Seedfall.Exchange.Tests.Ground;

/// <summary>Files with bytes changed, dropped, doubled and cut off: read or refused, never anything else. The seed once found XML no reader opens.</summary>
public sealed class OutlineFuzzTests
{
    private static readonly byte[][] Sound =
    [
        OutlineText.Bytes(OutlineText.GeoJson), OutlineText.Bytes(OutlineText.Gpx), OutlineText.Bytes(OutlineText.Kml), OutlineText.Zip(("doc.kml", OutlineText.Bytes(OutlineText.Kml))),
    ];

    private static readonly byte[][] Words =
    [
        "NaN"u8.ToArray(), "Infinity"u8.ToArray(), "1e999"u8.ToArray(), "-"u8.ToArray(), "<!DOCTYPE x>"u8.ToArray(), "&amp;"u8.ToArray(), "&#0;"u8.ToArray(),
        "]]>"u8.ToArray(), "<![CDATA["u8.ToArray(), "\\u0000"u8.ToArray(), "null"u8.ToArray(), [0xFF, 0xFE], [0xC0, 0x80], "[[[["u8.ToArray(), "}}"u8.ToArray(), "encoding=\"x\""u8.ToArray(), "PK\u0003\u0004"u8.ToArray(),
    ];

    private static readonly Gen<byte[]> Mutated =
        from which in Gen.Int[0, Sound.Length - 1]
        from changes in Gen.Select(Gen.Int[0, 5], Gen.Int[0, 100_000], Gen.Int[0, 100_000], Gen.Byte).Array[1, 6]
        select changes.Aggregate(Sound[which], (bytes, c) => Change(bytes, c.Item1, c.Item2, c.Item3, c.Item4));

    [Fact]
    public void A_mutated_file_is_read_or_refused() => Mutated.Sample(
        bytes =>
        {
            var read = OutlineFiles.Read(bytes, "fuzz");
            Assert.True(read.IsRead ? read.Outlines.Count + read.Walks.Count > 0 : read.Problem.Expected.Length > 0 && read.Problem.Found.Length > 0);
        },
        seed: "2F5DkbhGzq63", iter: 8000);

    [Fact]
    public void A_file_cut_off_anywhere_is_refused()
    {
        foreach (var sound in Sound)
        {
            Assert.True(OutlineFiles.Read(sound, "whole").IsRead);
            for (var length = 0; length < sound.Length - 1; length++)
            {
                Assert.False(OutlineFiles.Read(sound[..length], "cut").IsRead, $"cut at {length} of {sound.Length}");
            }
        }
    }

    [Fact]
    public void A_declaration_with_broken_bytes_and_nothing_behind_is_refused()
    {
        // Found by drawing: the platform's reader throws on its own arguments here.
        byte[] broken = [.. "<?xml version=\"1.0"u8, 0xFF, 0xFE, .. "\" encoding=\"UTF-8\"?>\n"u8];
        Assert.Equal("XML in the encoding it names", OutlineFiles.Read(broken, "broken").Problem!.Expected);
    }

    [Fact]
    public void Noise_is_refused() => Gen.Byte.Array[0, 300].Sample(bytes => Assert.False(OutlineFiles.Read(bytes, "noise").IsRead), iter: 2000);

    private static byte[] Change(byte[] bytes, int how, int a, int b, byte value)
    {
        if (bytes.Length == 0)
        {
            return [value];
        }

        var at = a % bytes.Length;
        var to = Math.Min(bytes.Length, at + b % 40);
        return how switch
        {
            0 => [.. bytes[..at], value, .. bytes[(at + 1)..]],
            1 => [.. bytes[..at], .. bytes[to..]],
            2 => [.. bytes[..to], .. bytes[at..]],
            3 => bytes[..at],
            4 => [.. bytes[..at], .. Words[b % Words.Length], .. bytes[at..]],
            _ => [.. bytes[..at], .. Words[b % Words.Length], .. bytes[to..]],
        };
    }
}

using System.Buffers.Binary;
using Seedfall.Photos.Pixels;
using Seedfall.Photos.Reading;
using SkiaSharp;

namespace Seedfall.Photos.Tests.Reading;

/// <summary>What strangers may send: refused by name, without harm and without great allocations.</summary>
public sealed class RefusalTests
{
    private static readonly string[] Kinds = ["jpeg", "png", "webp", "heic"];

    [Theory]
    [InlineData(20_000u, 20_000u)]
    [InlineData(12_001u, 10u)]
    [InlineData(8_000u, 8_000u)]
    [InlineData(2_147_483_647u, 2u)]
    public void ABombIsRefusedByItsHeaderWithoutItsPixels(uint width, uint height)
    {
        var bomb = Composed.PngOf(width, height);
        PhotoFile.Read(bomb);
        var before = GC.GetAllocatedBytesForCurrentThread();

        var problem = PhotoFile.Read(bomb).Problem!;

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 100_000);
        Assert.True(problem.Kind is PhotoProblemKind.TooManyPixels or PhotoProblemKind.Damaged, problem.Sentence);
    }

    [Fact]
    public void GiantSizesInOtherHeadersAreRefusedToo()
    {
        // SOF0 of a JPEG: length, precision, then height and width (ITU-T T.81, B.2.2).
        var jpeg = Composed.Patch(PhotoFileTests.Of("jpeg"), [0xFF, 0xC0], 3, [0xEA, 0x60, 0xEA, 0x60]);
        var heic = Composed.Patch(PhotoFileTests.Of("heic"), "ispe"u8, 4, [0, 0, 0xEA, 0x60, 0, 0, 0xEA, 0x60]);
        // VP8 key frame: start code, then 14 bits of width and of height (RFC 6386, 9.1); 16383 is the most they hold.
        var webp = Composed.Patch(PhotoFileTests.Of("webp"), [0x9D, 0x01, 0x2A], 0, [0xFF, 0x3F, 0xFF, 0x3F]);

        Assert.Equal(PhotoProblemKind.TooManyPixels, PhotoFile.Read(jpeg).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.TooManyPixels, PhotoFile.Read(heic).Problem!.Kind);
        Assert.True(PhotoFile.Read(webp).Problem!.Kind is PhotoProblemKind.TooManyPixels or PhotoProblemKind.Damaged);
    }

    [Theory]
    [InlineData("jpeg")]
    [InlineData("png")]
    [InlineData("webp")]
    [InlineData("heic")]
    public void APictureThatEndsEarlyIsRefusedAtEveryLength(string kind)
    {
        var whole = PhotoFileTests.Of(kind);
        for (var length = 0; length < whole.Length * 9 / 10; length += Math.Max(1, whole.Length / 60))
        {
            var result = PhotoFile.Read(whole.AsSpan(0, length));

            Assert.False(result.IsRead, $"{kind} of {length} bytes");
            Assert.NotEqual(PhotoProblemKind.TooManyPixels, result.Problem.Kind);
        }
    }

    [Fact]
    public void AHalfSentPhotographIsSaidToEndEarly()
    {
        var rgb = new byte[3 * 400 * 300];
        new Random(3).NextBytes(rgb);
        foreach (var format in new[] { SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png })
        {
            var whole = Composed.Encode(new PixelImage(400, 300, rgb), format, 90);
            Assert.Equal(PhotoProblemKind.Truncated, PhotoFile.Read(whole.AsSpan(0, whole.Length / 2)).Problem!.Kind);
        }
    }

    [Fact]
    public void WhatIsNoPictureIsSaidToBeNone()
    {
        Assert.Equal(PhotoProblemKind.Empty, PhotoFile.Read([]).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.UnknownFormat, PhotoFile.Read("<svg xmlns='http://www.w3.org/2000/svg'/>"u8).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.UnknownFormat, PhotoFile.Read("GIF89a\x01\0\x01\0"u8).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.TooManyBytes, PhotoFile.Read(new byte[200], new PhotoLimits { MostBytes = 100 }).Problem!.Kind);
    }

    [Fact]
    public void RandomBytesBehindEverySignatureDoNoHarm()
    {
        byte[][] signatures = [[0xFF, 0xD8, 0xFF, 0xE0], [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], "RIFF\0\x10\0\0WEBPVP8 "u8.ToArray(), "\0\0\0\x18ftypheic\0\0\0\0mif1heic"u8.ToArray()];
        var random = new Random(1);
        for (var i = 0; i < 800; i++)
        {
            var tail = new byte[random.Next(0, 3000)];
            random.NextBytes(tail);

            var result = PhotoFile.Read([.. signatures[i % signatures.Length], .. tail]);

            Assert.False(result.IsRead);
            Assert.NotEmpty(result.Problem.Sentence);
        }
    }

    [Fact]
    public void MutatedFilesAreReadOrRefusedAndNothingElse()
    {
        var random = new Random(2);
        foreach (var kind in Kinds)
        {
            var whole = PhotoFileTests.Of(kind);
            for (var i = 0; i < 500; i++)
            {
                var mutated = whole.ToArray();
                for (var n = random.Next(1, 6); n > 0; n--)
                {
                    Mutate(mutated, random);
                }

                var result = PhotoFile.Read(mutated);
                Assert.True(result.IsRead || result.Problem.Sentence.Length > 0);
            }
        }
    }

    /// <summary>One byte anywhere, or four bytes near the front set to an extreme.</summary>
    private static void Mutate(byte[] bytes, Random random)
    {
        if (random.Next(3) > 0)
        {
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
        }
        else
        {
            var at = random.Next(Math.Min(bytes.Length, 400) - 4);
            BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(at), random.Next(3) switch { 0 => 0u, 1 => uint.MaxValue, _ => 0x7FFFFFFF });
        }
    }
}

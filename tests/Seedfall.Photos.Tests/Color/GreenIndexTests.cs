using Seedfall.Photos.Color;

namespace Seedfall.Photos.Tests.Color;

/// <summary>Published indices of single pixels. Values marked computed follow from the cited formula; they are no outside evidence.</summary>
public sealed class GreenIndexTests
{
    [Fact]
    public void ExcessGreenOfChannelShares()
    {
        // Woebbecke et al. 1995, Trans. ASAE 38:259: 2g - r - b. (100, 120, 80): (240 - 180) / 300, computed.
        Assert.Equal(0.200, GreenIndex.ExcessGreen(100, 120, 80), 3);
        Assert.Equal(2.0, GreenIndex.ExcessGreen(0, 255, 0), 9);
        Assert.Equal(-1.0, GreenIndex.ExcessGreen(255, 0, 0), 9);
        Assert.Equal(0.0, GreenIndex.ExcessGreen(0, 0, 0), 9);
    }

    [Theory]
    [InlineData(100, 120, 80, true)]
    [InlineData(110, 115, 100, false)]
    [InlineData(150, 140, 90, false)]
    public void TheRatioRule(byte red, byte green, byte blue, bool isGreen)
    {
        // Patrignani and Ochsner 2015, Agron. J. 107:2312: R/G < 0.95, B/G < 0.95, 2G - R - B > 20. Thresholds from memory, paper not
        // read; R/G of the three pixels is 0.833, 0.957 and 1.07, computed.
        Assert.Equal(isGreen, GreenIndex.IsGreenByRatios(red, green, blue));
    }

    [Fact]
    public void DarkGreenColorIndex()
    {
        // Karcher and Richardson 2003, Crop Sci. 43:943: [(H - 60)/60 + (1 - S) + (1 - B)]/3. Formula from memory, values computed.
        Assert.Equal(0.678, GreenIndex.DarkGreenColor(110.0, 0.45, 0.35), 3);
        var (hue, saturation, brightness) = GreenIndex.HueSaturationBrightness(60, 110, 40);
        Assert.Equal(102.9, hue, 1);
        Assert.Equal(0.636, saturation, 3);
        Assert.Equal(0.431, brightness, 3);
        Assert.Equal(0.549, GreenIndex.DarkGreenColor(hue, saturation, brightness), 3);
    }

    [Fact]
    public void HueGoesAroundTheHexagon()
    {
        // Smith 1978, SIGGRAPH 12:12: red 0, green 120, blue 240 degrees.
        Assert.Equal(0.0, GreenIndex.HueSaturationBrightness(255, 0, 0).HueDeg, 9);
        Assert.Equal(120.0, GreenIndex.HueSaturationBrightness(0, 255, 0).HueDeg, 9);
        Assert.Equal(240.0, GreenIndex.HueSaturationBrightness(0, 0, 255).HueDeg, 9);
        Assert.Equal(300.0, GreenIndex.HueSaturationBrightness(255, 0, 255).HueDeg, 9);
    }
}

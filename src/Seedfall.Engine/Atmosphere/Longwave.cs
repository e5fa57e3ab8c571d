namespace Seedfall.Engine.Atmosphere;

/// <summary>Thermal radiation: FAO-56 net loss for reference evapotranspiration, and its parts in W m-2 for energy balances.</summary>
public static class Longwave
{
    /// <summary>Stefan-Boltzmann constant, W m-2 K-4.</summary>
    public const double StefanBoltzmannWm2K4 = 5.670374e-8;

    private const double DailyStefanBoltzmannMJ = 4.903e-9;
    private const double HourlyStefanBoltzmannMJ = 2.043e-10;

    /// <summary>Net outgoing longwave of a day, MJ m-2 d-1. FAO-56 eq. 39; the ratio of solar to clear-sky solar held within 0.3 to 1 (ASCE 2005).</summary>
    public static double NetDailyMJ(double tmaxC, double tminC, double vaporKPa, double solarMJ, double clearSkyMJ)
    {
        var emitted = DailyStefanBoltzmannMJ * 0.5 * (FourthPower(tmaxC + 273.16) + FourthPower(tminC + 273.16));
        var ratio = clearSkyMJ > 0.0 ? solarMJ / clearSkyMJ : 1.0;
        return emitted * Dryness(vaporKPa) * CloudFactor(ratio);
    }

    /// <summary>Net outgoing longwave of an hour, MJ m-2 h-1, from the ratio of solar to clear-sky solar. FAO-56 eq. 39, hourly form.</summary>
    public static double NetHourlyMJ(double airC, double vaporKPa, double solarRatio) =>
        HourlyStefanBoltzmannMJ * FourthPower(airC + 273.16) * Dryness(vaporKPa) * CloudFactor(solarRatio);

    /// <summary>Black-body emission at a temperature, W m-2.</summary>
    public static double BlackBodyWm2(double temperatureC) => StefanBoltzmannWm2K4 * FourthPower(temperatureC + 273.15);

    /// <summary>Longwave from the sky, W m-2: clear-sky emissivity with clouds added as a black share. Crawford and Duchon 1999.</summary>
    /// <param name="airC">Air temperature, degC.</param>
    /// <param name="clearSkyEmissivity">0 to 1, from <see cref="SkyEmissivity"/>.</param>
    /// <param name="cloudShare">0 clear to 1 overcast: 1 - solar / clear-sky solar by day, the afternoon's value through the night.</param>
    public static double DownwellingWm2(double airC, double clearSkyEmissivity, double cloudShare) =>
        (cloudShare + ((1.0 - cloudShare) * clearSkyEmissivity)) * BlackBodyWm2(airC);

    private static double Dryness(double vaporKPa) => 0.34 - (0.14 * Math.Sqrt(vaporKPa));

    private static double CloudFactor(double ratio) => (1.35 * Math.Clamp(ratio, 0.3, 1.0)) - 0.35;

    private static double FourthPower(double kelvin) => kelvin * kelvin * kelvin * kelvin;
}

namespace ShopDays.Benchmarks;

internal static class ForecastTimes
{
    public static void Print()
    {
    }
}

using ShopDays.Benchmarks;
using ShopDays.Layouts;

return args switch
{
    ["cold", ..] => ColdRun.Print(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 9),
    ["bench"] => await BenchLoad.Print(),
    ["bench-picture", var file] => await BenchPicture.Take(file),
    ["bounds"] => Bounds.Print(),
    ["cpsat", .. var words] => CpSat.Print(words),
    ["guillotine"] => Guillotine.Print(),
    ["layout"] => LayoutTimes.Print(),
    ["learn"] => LearnTimes.Print(),
    ["log"] => LogTimes.Print(),
    ["makers", ..] => Makers.Print(args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 200),
    ["psplib", .. var words] => Psplib.Print(words),
    ["regression"] => CertifiedDigits.Print(),
    ["schedule"] => ScheduleTimes.Print(),
    ["sawing"] => Sawing.Print(LayoutEffort.Normal),
    ["sawing", "long"] => Sawing.Print(LayoutEffort.Thorough),
    ["short"] => ShortStock.Print(),
    ["durations", var file] => Durations.Print(file),
    ["triplets"] => TripletSticks.Print(),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project tests/ShopDays.Benchmarks -- bench | bench-picture FILE | cold [RUNS] | bounds | cpsat [j60|j120|all] [SECONDS ...] [every N] | durations FILE | guillotine | layout | learn | log | makers [MANY] | psplib [j30|j60|j120|all] [SCHEDULES ...] [every N] | regression | sawing [long] | schedule | short | triplets");
    return 2;
}

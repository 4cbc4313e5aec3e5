using ShopDays.Bench.Tests;
using ShopDays.Bench.Tests.Browser;
using Xunit;

[assembly: AssemblyFixture(typeof(Chromium))]
[assembly: AssemblyFixture(typeof(BenchAtWork))]

internal static class Program { public static void Main() { } }

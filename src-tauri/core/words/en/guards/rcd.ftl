# Where the device in the outlet that ends a shock is called an RCD.

-a-guard = an RCD
-a-guard-short = an RCD
-guard = RCD

# All results into a data frame: R alone; with arrow it is read_parquet(paste0(here, "/v1/results.parquet")).
here <- Sys.getenv("HERE", "http://127.0.0.1:3000")
results <- read.csv(paste0(here, "/v1/results.csv"), check.names = FALSE)
first <- results[which(results$place == 1), ]
print(first[order(first$edition, first$category), c("edition", "category", "variant", "value", "unit")])

// Putting the data of a job into the page, whatever texts it holds.
#include "apps/cli/report_page.h"

#include <gtest/gtest.h>

namespace lastegg::cli {
namespace {

const char* const k_page =
    "<html lang=\"en\"><title>Treatment report</title><script id=\"report-data\" "
    "type=\"application/json\">null</script></html>";

Json data_of(const std::string& title) {
  return {{"report", {{"title", {{"text", title}}}, {"language", "en"}}}};
}

TEST(ReportPage, HoldsItsDataAndTitle) {
  const auto page = report_page(k_page, data_of("Treatment report: 2B"));
  ASSERT_TRUE(page);
  EXPECT_NE(page->find("<title>Treatment report: 2B</title>"), std::string::npos);
  EXPECT_NE(page->find("\"text\":\"Treatment report: 2B\""), std::string::npos);
}

TEST(ReportPage, ATextCannotEndTheScript) {
  const auto page = report_page(k_page, data_of("</script><script>alert(1)</script>&"));
  ASSERT_TRUE(page);
  EXPECT_EQ(page->find("alert(1)</script>&amp;"), std::string::npos);
  EXPECT_NE(page->find("\\u003c/script>"), std::string::npos);
  EXPECT_NE(page->find("<title>&lt;/script>"), std::string::npos);
}

TEST(ReportPage, RefusesAPageWithoutAPlace) {
  EXPECT_FALSE(report_page("<html></html>", data_of("a")));
}

}  // namespace
}  // namespace lastegg::cli

// The formatting library, compiled once. Its package holds headers and a shared library; as headers alone it
// would be compiled again in every source that formats anything, which doubles their time.
#include <fmt/format-inl.h>

FMT_BEGIN_NAMESPACE
template FMT_API std::locale detail::locale_ref::get<std::locale>() const;
template FMT_API auto detail::thousands_sep_impl(locale_ref) -> thousands_sep_result<char>;
template FMT_API auto detail::decimal_point_impl(locale_ref) -> char;
template FMT_API void detail::buffer<char>::append(const char*, const char*);
template FMT_API void detail::vformat_to(detail::buffer<char>&, string_view,
                                         basic_format_args<FMT_BUFFER_CONTEXT(char)>, detail::locale_ref);
namespace detail {
template FMT_API dragonbox::decimal_fp<float> dragonbox::to_decimal(float x) noexcept;
template FMT_API dragonbox::decimal_fp<double> dragonbox::to_decimal(double x) noexcept;
}  // namespace detail
FMT_END_NAMESPACE
